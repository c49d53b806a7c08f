import type { SettingKey, Settings } from '@loopwright/model';
import type { Severity } from '../figures.ts';

/** One severity's limit, and the setting it is. */
export interface Tier {
  readonly severity: Severity;
  readonly limit: number;
  readonly setting: SettingKey;
}

type Named<Name extends string> = `${Name}-stop` | `${Name}-look` | `${Name}-mention`;

/** Names under which a measure has at least one limit. */
export type Measure = { [K in SettingKey]: K extends `${infer Name}-${Severity}` ? Name : never }[SettingKey];

const SEVERITIES: readonly Severity[] = ['stop', 'look', 'mention'];

/** The limits of a measure in force on a board, most severe first. */
export function tiersOf<Name extends Measure>(name: Name, settings: Settings): readonly Tier[] {
  return SEVERITIES.flatMap((severity) => {
    const key: string = `${name}-${severity}` satisfies Named<Name>;
    const setting = key as SettingKey;
    const limit: number | undefined = settings[setting];
    return limit === undefined ? [] : [{ severity, limit, setting }];
  });
}

/** The most severe limit that `measured` stays under; `undefined` when it is clear of all. */
export function tierUnder(tiers: readonly Tier[], measured: number): Tier | undefined {
  for (const tier of tiers) if (measured < tier.limit) return tier;
  return undefined;
}

/** The most severe limit that `measured` goes beyond. */
export function tierOver(tiers: readonly Tier[], measured: number): Tier | undefined {
  for (const tier of tiers) if (measured > tier.limit) return tier;
  return undefined;
}

/** The most severe limit that a count reaches. */
export function tierReached(tiers: readonly Tier[], count: number): Tier | undefined {
  for (const tier of tiers) if (count >= tier.limit) return tier;
  return undefined;
}

/** The largest limit: a measure beyond it is of no interest. */
export function farthestOf(tiers: readonly Tier[]): number {
  return tiers.reduce((most, { limit }) => Math.max(most, limit), 0);
}
