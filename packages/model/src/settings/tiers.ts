import type { SettingDefinition } from './setting.ts';

type Tier = 'stop' | 'look' | 'mention';

interface About extends Pick<SettingDefinition, 'group' | 'label' | 'unit' | 'least' | 'most' | 'status' | 'safety'> {
  /** Completed by each tier's own share of real cases. */
  readonly source: string;
}

/** A tier's default and, where it was calibrated, the share of real cases beyond it. */
type Limit = readonly [value: number, share?: string];

/**
 * The limits of one measure as settings, one key a severity: `spacing-stop`, `spacing-look`, `spacing-mention`.
 *
 * Each can be changed alone. A severity without a limit has no key and is never given.
 */
export function tiers<const Name extends string, const T extends Tier>(
  name: Name,
  limits: Readonly<Record<T, Limit>>,
  about: About,
): Record<`${Name}-${T}`, SettingDefinition> {
  const settings: Record<string, SettingDefinition> = {};
  for (const [tier, [value, share]] of Object.entries<Limit>(limits)) {
    settings[`${name}-${tier}`] = {
      ...about,
      label: `${about.label} (${tier})`,
      default: value,
      source: share === undefined ? about.source : `${about.source}: ${share} % of real cases are beyond`,
    };
  }
  return settings as Record<`${Name}-${T}`, SettingDefinition>;
}
