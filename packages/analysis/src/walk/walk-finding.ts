import type { FeatureId, HoleId, SettingKey } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { Finding, FindingPlace, FindingUnit, Severity, WalkFigures } from '../figures.ts';

interface Noticed {
  readonly code: string;
  readonly severity: Severity;
  /** What is crossed or passed, before the ends of the walk. */
  readonly about?: HoleId;
  readonly features?: readonly FeatureId[];
  readonly measured: number;
  readonly limit: number;
  readonly unit?: FindingUnit;
  readonly worse?: 'less' | 'more';
  readonly setting: SettingKey;
  readonly place: FindingPlace;
  readonly detail?: Finding['detail'];
  readonly safety: boolean;
}

/** A finding about a walk. Its holes: the one it concerns, if any, then the green left and the tee walked to. */
export function walkFinding(walk: WalkFigures, noticed: Noticed): Finding {
  const { code, severity, about, features = [], measured, limit, unit = 'm', worse = 'more' } = noticed;
  const { setting, place, detail = {}, safety } = noticed;
  return {
    key: [code, ...(about === undefined ? [] : [about]), walk.key, ...features].join('|'),
    code,
    severity,
    holes: [...(about === undefined ? [] : [about]), ...endsOf(walk)],
    features,
    loop: walk.loop,
    measured: toMillimetre(measured),
    limit,
    unit,
    worse,
    setting,
    place,
    detail,
    safety,
  };
}

/** The holes at the ends of a walk: the green left, the tee walked to. */
export function endsOf({ from, to }: WalkFigures): readonly HoleId[] {
  return [...('hole' in from ? [from.hole] : []), ...('hole' in to ? [to.hole] : [])];
}
