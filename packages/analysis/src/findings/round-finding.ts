import { type HoleId, type LoopId, type SettingKey, type Settings, toMillimetre } from '@loopwright/model';
import type { Finding, FindingPlace, FindingUnit, Severity } from '../figures.ts';
import type { FindingCode } from './catalogue.ts';
import type { Tier } from './tier.ts';

interface Noticed {
  readonly code: FindingCode;
  /** In the order the sentence names them. */
  readonly holes: readonly HoleId[];
  /** Said of the whole round, or of a loop: the holes then do not tell it apart. */
  readonly about?: string;
  readonly loop?: LoopId;
  readonly measured: number;
  readonly tier: Tier;
  readonly unit: FindingUnit;
  readonly worse: Finding['worse'];
  readonly place?: FindingPlace;
  readonly detail?: Finding['detail'];
}

/** A finding about how the round runs. Nobody is hurt by it, so it can be kept on purpose. */
export function roundFinding(noticed: Noticed): Finding {
  const { code, holes, about, loop, measured, tier, unit, worse, place, detail = {} } = noticed;
  return {
    key: [code, ...(about === undefined ? holes : [about])].join('|'),
    code,
    severity: tier.severity,
    holes,
    features: [],
    ...(loop !== undefined && { loop }),
    measured: toMillimetre(measured),
    limit: tier.limit,
    unit,
    worse,
    setting: tier.setting,
    place: place ?? { type: 'round' },
    detail,
    safety: false,
  };
}

/** A limit that stands for itself: one severity, one setting. */
export function onlyTier(setting: SettingKey, settings: Settings, severity: Severity = 'mention'): Tier {
  return { severity, limit: settings[setting], setting };
}

/** Findings without repeats: loops that several rounds play are looked at once per round. */
export function withoutRepeats(findings: readonly Finding[]): readonly Finding[] {
  return [...new Map(findings.map((finding) => [finding.key, finding])).values()];
}
