// Numbers, signs and names of a crowded board placed in a picture of a drag: ours, where each is compared with its neighbours,
// beside the plain way of comparing each with all.
import { type CanvasPoint, seededRandom } from '@loopwright/model';
import { bench, describe } from 'vitest';
import { type Label, placeLabels, placesAround } from './label-placement.ts';

const LABELS = 200;
const random = seededRandom(3);
const BUSY: readonly Label[] = Array.from({ length: LABELS }, (_, index) => {
  const at = { x: 450 * random(), y: 350 * random() };
  return {
    id: `${index}`,
    places: [18, 30, 42].flatMap((distance) => placesAround(at, distance)),
    halfWidth: 6 + 10 * random(),
    halfHeight: 9,
    when: 'always',
  };
});

interface Placed {
  readonly label: Label;
  readonly at: CanvasPoint;
}

const meet = (one: Placed, other: Placed): boolean =>
  Math.abs(one.at.x - other.at.x) < one.label.halfWidth + other.label.halfWidth &&
  Math.abs(one.at.y - other.at.y) < one.label.halfHeight + other.label.halfHeight;

function placedAgainstAll(labels: readonly Label[]): number {
  const taken: Placed[] = [];
  for (const label of labels) {
    const covers = (at: CanvasPoint) => taken.filter((other) => meet(other, { label, at })).length;
    const free = label.places.find((at) => !taken.some((other) => meet(other, { label, at })));
    const counts = free ? [] : label.places.map(covers);
    const at = free ?? label.places[counts.indexOf(Math.min(...counts))];
    if (at) taken.push({ label, at });
  }
  return taken.length;
}

describe(`${LABELS} labels placed`, () => {
  bench('ours', () => {
    if (placeLabels(BUSY).size !== LABELS) throw new Error('one was left out');
  });
  bench('each compared with all', () => {
    if (placedAgainstAll(BUSY) !== LABELS) throw new Error('one was left out');
  });
});
