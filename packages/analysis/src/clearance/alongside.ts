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
  if (!someLegsAgree(first.legs, second.legs, rule.cosine)) return undefined;
  const distances: number[] = [];
  let opposed = 0;
  let least = Number.POSITIVE_INFINITY;
  let closest: { readonly leg: Leg; readonly on: number; readonly beside: Leg } | undefined;
  for (const leg of first.legs) {
    for (let on = firstStep(leg, rule.offTee); on < leg.length; on += STEP) {
      const x = leg.a.x + leg.towards.x * on;
      const y = leg.a.y + leg.towards.y * on;
      const beside = legBeside(x, y, leg, second.legs, rule);
      if (!beside) continue;
      const apart = asideOf(x, y, beside);
      distances.push(apart);
      opposed += agreement(leg, beside) < 0 ? 1 : -1;
      if (apart >= least) continue;
      least = apart;
      closest = { leg, on, beside };
    }
  }
  const stretch = distances.length * STEP;
  if (!closest || stretch < rule.stretch) return undefined;
  return { spacing: middleOf(distances), stretch, opposed: opposed > 0, places: placesOf(closest) };
}

function placesOf({ leg, on, beside }: { leg: Leg; on: number; beside: Leg }): readonly [SitePoint, SitePoint] {
  const x = leg.a.x + leg.towards.x * on;
  const y = leg.a.y + leg.towards.y * on;
  const level = levelOn(x, y, beside);
  return [
    { x, y },
    { x: beside.a.x + beside.towards.x * level, y: beside.a.y + beside.towards.y * level },
  ];
}

/** Steps are counted from the tee, so that a turn point moved along its leg moves none of them. */
function firstStep(leg: Leg, offTee: number): number {
  const from = Math.max(leg.before, offTee);
  return Math.ceil(from / STEP) * STEP - leg.before;
}

function someLegsAgree(first: readonly Leg[], second: readonly Leg[], cosine: number): boolean {
  for (const a of first) {
    for (const b of second) {
      if (Math.abs(agreement(a, b)) >= cosine) return true;
    }
  }
  return false;
}

/** The nearest leg that passes beside a place of `from`; nothing is made in here: it is asked for thousands of times. */
function legBeside(x: number, y: number, from: Leg, legs: readonly Leg[], rule: AlongsideRule): Leg | undefined {
  let best: Leg | undefined;
  let least = WIDEST;
  for (const leg of legs) {
    if (Math.abs(agreement(from, leg)) < rule.cosine) continue;
    const on = levelOn(x, y, leg);
    if (on < 0 || on > leg.length || leg.before + on < rule.offTee) continue;
    const apart = asideOf(x, y, leg);
    if (apart > WIDEST || (best && apart >= least)) continue;
    best = leg;
    least = apart;
  }
  return best;
}

function agreement(a: Leg, b: Leg): number {
  return a.towards.x * b.towards.x + a.towards.y * b.towards.y;
}

/** Metres along a leg that a place is level with. */
function levelOn(x: number, y: number, { a, towards }: Leg): number {
  return (x - a.x) * towards.x + (y - a.y) * towards.y;
}

/** Metres off a leg's line. */
function asideOf(x: number, y: number, { a, towards }: Leg): number {
  return Math.abs((x - a.x) * towards.y - (y - a.y) * towards.x);
}

function middleOf(distances: readonly number[]): number {
  const sorted = distances.toSorted((a, b) => a - b);
  const upper = sorted[sorted.length >> 1] ?? 0;
  const lower = sorted[(sorted.length - 1) >> 1] ?? upper;
  return toMillimetre((upper + lower) / 2);
}
