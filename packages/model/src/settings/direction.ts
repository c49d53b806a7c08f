import type { SettingDefinition } from './setting.ts';

export const DIRECTION_SETTINGS = {} as const satisfies Record<string, SettingDefinition>;
