import type { FeatureKind, HoleId, SettingKey, Settings } from '@loopwright/model';
import type { CrossingPlace, Finding, HoleFigures, Severity, WalkCrossing, WalkFigures } from '../figures.ts';
import { SEVERITY_RANK } from '../findings/one-alarm.ts';
import type { FeatureCrossing } from './feature-crossings.ts';
import { leftToGreen } from './line-crossings.ts';
import { walkFinding } from './walk-finding.ts';

interface Judged {
  readonly severity: Severity;
  readonly setting: SettingKey;
  readonly measured: number;
  readonly worse: 'less' | 'more';
}

/**
 * Where a walk crosses lines of play. Far from the tee and from the green it is a `stop`; before a green or 20–50 m
 * ahead of a tee a `look`; close in front of a tee a `mention`; behind a tee or green nothing. Of several crossings
 * of one line the worst is told.
 *
 * Source of the limits: 527 walks on 31 mapped courses.
 */
export function checkLineCrossings(
  walk: WalkFigures,
  figures: ReadonlyMap<HoleId, HoleFigures>,
  settings: Settings,
): readonly Finding[] {
  const worst = new Map<HoleId, Finding>();
  for (const { at, what } of walk.crossings) {
    if (what.kind !== 'line of play' || what.where === 'behind') continue;
    const hole = figures.get(what.hole);
    if (!hole) continue;
    const judged = judge(what.ahead, leftToGreen(hole, what.ahead), settings);
    const finding = crossingFinding(walk, at, what.hole, what.where, what.ahead, judged, settings);
    const before = worst.get(what.hole);
    if (!before || SEVERITY_RANK[finding.severity] < SEVERITY_RANK[before.severity]) worst.set(what.hole, finding);
  }
  return [...worst.values()];
}

/** The worst that a walk's crossings of one line of play are called; `undefined` where it only passes behind, or not at all. */
export function crossingSeverity(walk: WalkFigures, hole: HoleFigures, settings: Settings): Severity | undefined {
  let worst: Severity | undefined;
  for (const { what } of walk.crossings) {
    if (what.kind !== 'line of play' || what.hole !== hole.id || what.where === 'behind') continue;
    const { severity } = judge(what.ahead, leftToGreen(hole, what.ahead), settings);
    if (!worst || SEVERITY_RANK[severity] < SEVERITY_RANK[worst]) worst = severity;
  }
  return worst;
}

function judge(ahead: number, left: number, settings: Settings): Judged {
  const isFar = ahead >= settings['walk-crossing-stop'];
  const isLast = left < settings['walk-crossing-short-of-green'];
  if (isFar && !isLast) return { severity: 'stop', setting: 'walk-crossing-stop', measured: ahead, worse: 'more' };
  if (isFar) return { severity: 'look', setting: 'walk-crossing-short-of-green', measured: left, worse: 'less' };
  const isLook = ahead >= settings['walk-crossing-look'];
  return isLook
    ? { severity: 'look', setting: 'walk-crossing-look', measured: ahead, worse: 'more' }
    : { severity: 'mention', setting: 'walk-crossing-mention', measured: ahead, worse: 'more' };
}

function crossingFinding(
  walk: WalkFigures,
  at: WalkCrossing['at'],
  crossed: HoleId,
  crossing: CrossingPlace,
  ahead: number,
  judged: Judged,
  settings: Settings,
): Finding {
  return walkFinding(walk, {
    code: 'walk-crosses-line-of-play',
    about: crossed,
    ...judged,
    limit: settings[judged.setting],
    place: { type: 'point', at },
    detail: { crossing, ahead },
    safety: true,
  });
}

interface FeatureRule {
  readonly code: string;
  readonly severity: Severity;
  readonly setting: SettingKey;
  readonly counts: 'metres' | 'times';
  readonly safety: boolean;
}

const RULES: Readonly<Partial<Record<FeatureKind, FeatureRule>>> = {
  'public road': {
    code: 'walk-crosses-road',
    severity: 'look',
    setting: 'walk-crossing-road',
    counts: 'times',
    safety: true,
  },
  range: {
    code: 'walk-crosses-range',
    severity: 'look',
    setting: 'walk-crossing-range',
    counts: 'metres',
    safety: true,
  },
  water: {
    code: 'walk-crosses-water',
    severity: 'mention',
    setting: 'walk-crossing-water',
    counts: 'times',
    safety: false,
  },
};

/** Roads, water and the practice range that a walk goes over. Other ground closed to walking is told with the clearances. */
export function checkFeatureCrossings(
  walk: WalkFigures,
  crossings: readonly FeatureCrossing[],
  settings: Settings,
): readonly Finding[] {
  return crossings.flatMap(({ feature, at, metres, times }) => {
    const rule = RULES[feature.kind];
    if (!rule) return [];
    const { code, severity, setting, counts, safety } = rule;
    const measured = counts === 'metres' ? metres : times;
    const limit = settings[setting];
    if (measured <= limit) return [];
    const unit = counts === 'metres' ? 'm' : 'crossings';
    const place = { type: 'point', at } as const;
    return [
      walkFinding(walk, { code, severity, features: [feature.id], measured, limit, unit, setting, place, safety }),
    ];
  });
}
