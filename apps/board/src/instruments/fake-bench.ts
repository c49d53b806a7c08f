import type { NamedEdit } from '@loopwright/document';
import type { Plan, Routing } from '@loopwright/model';
import type { Reading, Selection } from '../board/parts.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import type { PointerAt } from '../tools/tool.ts';
import type { Bench } from './instrument.ts';

/** What a test may set; the rest is the two holes of the view models' tests, read in metres, one pixel a metre. */
interface FakeBenchParts {
  readonly plan?: Plan;
  readonly routing?: Routing;
  readonly reading?: Reading;
  readonly selection?: Selection;
  readonly scale?: number;
  readonly snap?: Bench['snap'];
}

/** A bench without board, canvas and document, for the tests of instruments: it remembers what was asked of it. */
export function openFakeBench(parts: FakeBenchParts = {}) {
  const written: NamedEdit[] = [];
  const said: string[] = [];
  let shown: NamedEdit | undefined;
  let selection: Selection = parts.selection ?? {};
  let isAway = false;
  let ids = 100; // unlike any id of the plan
  const bench: Bench = {
    plan: () => parts.plan ?? PLAN,
    written: () => parts.plan ?? PLAN,
    routing: () => parts.routing ?? ROUTING,
    analysis: () => ANALYSIS,
    reading: () => parts.reading ?? { units: 'metres', teeSet: 'back' },
    selection: () => selection,
    me: () => ({ name: 'Ann', ink: 2 }),
    scale: () => parts.scale ?? 1,
    freshId: (letter) => {
      ids += 1;
      return `${letter}${ids}`;
    },
    snap: parts.snap ?? ((at) => ({ at })),
    show: (edit) => {
      shown = edit;
    },
    write: () => {
      if (!shown) return 'nothing';
      written.push(shown);
      shown = undefined;
      return 'done';
    },
    edit: (edit) => {
      written.push(edit);
      return 'done';
    },
    select: (next) => {
      selection = next;
    },
    say: (words) => said.push(words),
    putAway: () => {
      isAway = true;
    },
  };
  return { bench, written, said, shown: () => shown, isAway: () => isAway };
}

/** The mouse over a place, one metre a pixel. */
export const mouseAt = (x: number, y: number): PointerAt => ({ canvas: { x, y: -y }, site: { x, y }, kind: 'mouse' });
