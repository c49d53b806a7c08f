import { roundedCosine } from '@loopwright/geometry';
import { type Settings, type SitePoint, toMillimetre } from '@loopwright/model';
import type { Leg } from './legs.ts';

/** Metres between the places where the spacing is taken. */
const STEP = 10;

/** Holes further apart than this do not lie beside each other: the widest spacing of the calibration was 148 m. */
const WIDEST = 150;

/** What counts as lying alongside, from the settings. */
export interface AlongsideRule {
  /** Headings agree, or oppose, within an angle of this cosine. */
  readonly cosine: number;
  /** Metres left out off each tee. */
  readonly offTee: number;
  /** Metres that they run beside each other at least. */
  readonly stretch: number;
}

export function alongsideRule(settings: Settings): AlongsideRule {
  return {
    cosine: roundedCosine(settings['spacing-angle']),
    offTee: settings['spacing-off-tee'],
    stretch: settings['spacing-stretch'],
  };
}

interface WithLegs {
  readonly legs: readonly Leg[];
}

export interface Alongside {
  /** Middle value of the distances, metres to the millimetre. */
  readonly spacing: number;
  /** How far they run beside each other, metres. */
  readonly stretch: number;
  readonly opposed: boolean;
  /** Where they come closest. */
  readonly places: readonly [SitePoint, SitePoint];
}

/**
 * Two holes that run beside each other, if they do.
 *
 * Every 10 m of the first line, from where its tee is left behind, the nearest place of the second is taken where
 * the headings agree, or oppose, within the angle and the second line really passes beside it. They lie alongside
 * when that holds for the stretch asked for.
 *
 * Cost: one look at the second hole's legs every 10 m.
 * Source: the measure the limits were calibrated with, on 31 mapped courses.
 */
export function alongside(first: WithLegs, second: WithLegs, rule: AlongsideRule): Alongside | undefined {
  const { cosine, offTee } = rule;
  if (!someLegsAgree(first.legs, second.legs, cosine)) return undefined;
  const distances: number[] = [];
  let opposed = 0;
  let closest: { readonly apart: number; readonly places: readonly [SitePoint, SitePoint] } | undefined;
  for (const leg of first.legs) {
    for (let on = firstStep(leg, offTee); on < leg.length; on += STEP) {
      const at = { x: leg.a.x + leg.towards.x * on, y: leg.a.y + leg.towards.y * on };
      const beside = besideLine(at, leg.towards, second.legs, cosine, offTee);
      if (!beside) continue;
      distances.push(beside.apart);
      opposed += beside.opposed ? 1 : -1;
      if (!closest || beside.apart < closest.apart) closest = { apart: beside.apart, places: [at, beside.at] };
    }
  }
  const stretch = distances.length * STEP;
  if (!closest || stretch < rule.stretch) return undefined;
  return { spacing: middleOf(distances), stretch, opposed: opposed > 0, places: closest.places };
}

/** Steps are counted from the tee, so that a turn point moved along its leg moves none of them. */
function firstStep(leg: Leg, offTee: number): number {
  const from = Math.max(leg.before, offTee);
  return Math.ceil(from / STEP) * STEP - leg.before;
}

function someLegsAgree(first: readonly Leg[], second: readonly Leg[], cosine: number): boolean {
  for (const a of first) {
    for (const b of second) {
      if (Math.abs(a.towards.x * b.towards.x + a.towards.y * b.towards.y) >= cosine) return true;
    }
  }
  return false;
}

interface Beside {
  readonly apart: number;
  readonly at: SitePoint;
  readonly opposed: boolean;
}

function besideLine(
  at: SitePoint,
  towards: SitePoint,
  legs: readonly Leg[],
  cosine: number,
  offTee: number,
): Beside | undefined {
  let best: Beside | undefined;
  for (const leg of legs) {
    const agree = towards.x * leg.towards.x + towards.y * leg.towards.y;
    if (Math.abs(agree) < cosine) continue;
    const dx = at.x - leg.a.x;
    const dy = at.y - leg.a.y;
    const on = dx * leg.towards.x + dy * leg.towards.y;
    if (on < 0 || on > leg.length || leg.before + on < offTee) continue;
    const apart = Math.abs(dx * leg.towards.y - dy * leg.towards.x);
    if (apart > WIDEST || (best && apart >= best.apart)) continue;
    best = { apart, at: { x: leg.a.x + leg.towards.x * on, y: leg.a.y + leg.towards.y * on }, opposed: agree < 0 };
  }
  return best;
}

function middleOf(distances: readonly number[]): number {
  const sorted = distances.toSorted((a, b) => a - b);
  const upper = sorted[sorted.length >> 1] ?? 0;
  const lower = sorted[(sorted.length - 1) >> 1] ?? upper;
  return toMillimetre((upper + lower) / 2);
}
