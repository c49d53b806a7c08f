import type { NamedEdit } from '@loopwright/document';
import { ringContains } from '@loopwright/geometry';
import { type Green, type Hole, holeOf, LIMITS, type SitePoint } from '@loopwright/model';
import { lengthWords } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { chosenHoles } from '../../tools/chosen-holes.ts';
import { outlined, shapeOf } from '../../tools/green-shapes.ts';
import type { Bench } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { startOutline } from '../outline/start-outline.ts';

/** What is shown while there is no green to be drawn: it changes nothing. */
const NOTHING: NamedEdit = { edit: 'several', does: 'nothing', edits: [] };
const NO_GREEN = 'Choose one hole that has a green first, then draw the outline of it.';
const LOCKED = 'This routing is locked: look at it, but nothing on it moves.';

/** Draws the outline of the chosen hole's green, round its middle. */
export function openGreenOutline(): InstrumentEntry {
  return {
    instrument: {
      name: 'green outline',
      title: 'Green outline',
      does: 'Draws the chosen hole’s green by its edge instead of an oval.',
      start: (bench) => {
        const of = greenChosen(bench);
        return startOutline(bench, {
          shape: () => 'area',
          begins: () => of?.begins ?? NO_GREEN,
          editFor: (points) => (of ? of.editFor(points) : NOTHING),
          refusal: (points) => (of ? of.refusal(points) : NO_GREEN),
          written: (result) => {
            if (result !== 'done' || !of) return;
            bench.select({ hole: of.hole, part: 'green' });
            bench.putAway();
          },
        });
      },
    },
  };
}

/** The green of the one hole picked out as the instrument is taken. */
function greenChosen(bench: Bench) {
  const routing = bench.routing();
  const [only, ...more] = chosenHoles(routing, bench.selection());
  const hole = only === undefined || more.length > 0 ? undefined : holeOf(routing, only);
  if (!hole?.green) return undefined;
  const number = namesOf(bench.plan(), routing, bench.reading().units).number(hole.id);
  const { green } = hole;
  return {
    hole: hole.id,
    begins: `Press round the edge of green ${number}; its middle stays where it is.`,
    editFor: (points: readonly SitePoint[]): NamedEdit => ({
      edit: 'shape green',
      routing: routing.id,
      hole: hole.id,
      shape: outlined(
        shapeOf(green),
        points.map((at) => ({ x: at.x - green.centre.x, y: at.y - green.centre.y })),
      ),
    }),
    refusal: (points: readonly SitePoint[]) => {
      const now = bench.routing();
      if (now.locked) return LOCKED;
      const furthest = lengthWords(LIMITS.greenSize / 2, bench.reading().units);
      return refusalOf(holeOf(now, hole.id), green, points, { number, furthest });
    },
  };
}

interface GreenWords {
  readonly number: string;
  /** How far from its middle a green may reach. */
  readonly furthest: string;
}

function refusalOf(
  hole: Hole | undefined,
  { centre }: Green,
  points: readonly SitePoint[],
  { number, furthest }: GreenWords,
) {
  if (!hole || hole.seat.in === 'removed') return 'That hole was removed meanwhile: nothing was drawn.';
  if (hole.pinned.includes('green')) return `Green ${number} is pinned: take the pin out first.`;
  if (!ringContains(points, centre)) {
    return `The middle of green ${number} must lie inside: the line of play ends there. Move the green first, or draw round it.`;
  }
  const far = points.some(
    (at) => Math.max(Math.abs(at.x - centre.x), Math.abs(at.y - centre.y)) > LIMITS.greenSize / 2,
  );
  return far ? `No green reaches ${furthest} from its middle.` : undefined;
}
