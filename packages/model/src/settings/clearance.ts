import type { SettingDefinition } from './setting.ts';

export const CLEARANCE_SETTINGS = {} as const satisfies Record<string, SettingDefinition>;
