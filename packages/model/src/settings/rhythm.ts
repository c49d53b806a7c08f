import type { SettingDefinition } from './setting.ts';

export const RHYTHM_SETTINGS = {} as const satisfies Record<string, SettingDefinition>;
