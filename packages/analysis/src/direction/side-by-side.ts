import { boundsOf, boxesMeet, grown } from '@loopwright/geometry';
import type { Settings } from '@loopwright/model';
import { alongside, alongsideRule } from '../clearance/alongside.ts';
import { legsOf } from '../clearance/legs.ts';
import type { Finding } from '../figures.ts';
import { roundFinding } from '../findings/round-finding.ts';
import type { RoundHole } from '../rhythm/round-holes.ts';
import type { RoundDirections } from './round-directions.ts';

/**
 * Three holes side by side, all played the same way, wherever they come in the round.
 *
 * Two holes are side by side when they lie alongside (as for their spacing) nearer than the setting.
 * Source: two of 31 mapped courses have such a three.
 */
export function checkSideBySide({ holes, settings }: RoundDirections): readonly Finding[] {
  const beside = besideEach(holes, settings);
  const findings: Finding[] = [];
  for (const middle of holes) {
    const sides = beside.get(middle) ?? [];
    sides.forEach((one, i) => {
      for (const other of sides.slice(i + 1)) {
        if (beside.get(one)?.includes(other) && !isMiddle(middle, one, other)) continue;
        findings.push(threeFinding([one, middle, other], settings));
      }
    });
  }
  return findings;
}

/** Of three that all lie side by side with each other, the one that lies between is the middle. */
function isMiddle(middle: RoundHole, one: RoundHole, other: RoundHole): boolean {
  const across = (hole: RoundHole) => {
    const at = hole.greenCentre;
    return at.x * middle.heading.y - at.y * middle.heading.x;
  };
  return (across(one) - across(middle)) * (across(other) - across(middle)) < 0;
}

function besideEach(holes: readonly RoundHole[], settings: Settings): ReadonlyMap<RoundHole, readonly RoundHole[]> {
  const rule = alongsideRule(settings);
  const widest = settings['side-by-side-apart'];
  const lines = holes.map((hole) => {
    const line = hole.figures.centreline;
    const box = boundsOf(line);
    return { hole, legs: legsOf(line), box, near: grown(box, widest) };
  });
  const beside = new Map<RoundHole, RoundHole[]>(holes.map((hole) => [hole, []]));
  lines.forEach((first, i) => {
    for (const second of lines.slice(i + 1)) {
      const { heading } = first.hole;
      if (heading.x * second.hole.heading.x + heading.y * second.hole.heading.y <= 0) continue;
      // No place of either line is nearer than the boxes.
      if (!boxesMeet(first.near, second.box)) continue;
      const found = alongside(first, second, rule);
      if (!found || found.opposed || found.spacing >= widest) continue;
      beside.get(first.hole)?.push(second.hole);
      beside.get(second.hole)?.push(first.hole);
    }
  });
  return beside;
}

function threeFinding(three: readonly [RoundHole, RoundHole, RoundHole], settings: Settings): Finding {
  const inOrder = three.toSorted((a, b) => a.number - b.number);
  const ids = inOrder.map(({ id }) => id);
  return roundFinding({
    code: 'side-by-side-one-way',
    holes: ids,
    about: ids.toSorted().join('|'),
    measured: 3,
    tier: { severity: 'mention', limit: 3, setting: 'side-by-side-apart' },
    unit: 'holes',
    worse: 'more',
    place: { type: 'line', points: three.map(({ greenCentre }) => greenCentre) },
    detail: { apart: settings['side-by-side-apart'] },
  });
}
