import type { SettingDefinition } from './setting.ts';

export const CARD_SETTINGS = {} as const satisfies Record<string, SettingDefinition>;
