import { type FeatureId, type HoleId, type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding, FindingPlace } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import type { Tier } from '../findings/tier.ts';

interface Noticed {
  readonly code: FindingCode;
  /** In the order the sentence names them. */
  readonly holes: readonly HoleId[];
  readonly features?: readonly FeatureId[];
  readonly measured: number;
  readonly tier: Tier;
  readonly place: FindingPlace;
  readonly detail?: Readonly<Record<string, string | number>>;
  /** Where the ids of holes and features do not tell two findings apart. */
  readonly about?: string;
}

/** A finding of too little room, in metres. Somebody can be hurt, unless it says otherwise. */
export function clearanceFinding(noticed: Noticed): Finding {
  const { code, holes, features = [], measured, tier, place, detail = {}, about } = noticed;
  return {
    key: [code, ...holes, ...features, ...(about === undefined ? [] : [about])].join('|'),
    code,
    severity: tier.severity,
    holes,
    features,
    measured: toMillimetre(measured),
    limit: tier.limit,
    unit: 'm',
    worse: 'less',
    setting: tier.setting,
    place,
    detail,
    safety: true,
  };
}

/** The two places that are too close; one point where they are the same. */
export function betweenPlaces(a: SitePoint, b: SitePoint): FindingPlace {
  return a.x === b.x && a.y === b.y ? { type: 'point', at: a } : { type: 'line', points: [a, b] };
}
