import { pointAlong, polylineLength } from '@loopwright/geometry';
import { type Hole, type HoleId, holeOf, type PartId } from '@loopwright/model';
import { toCanvas } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import { type HoleHands, placeForKey } from '../hole-menu/hole-hands.ts';
import type { KeyWork } from '../instruments/key-work.ts';
import type { BoardSession } from '../live/board-session.ts';
import { choosing, chosenHoles, holesInOrder } from '../tools/chosen-holes.ts';
import type { KeyMeaning } from '../tools/keys.ts';
import { nextVertex, takenAway } from '../tools/land/nudge-thing.ts';
import { neighbourInRound, nextPart } from '../tools/nudge.ts';
import { takenOut } from '../tools/take-out.ts';
import type { HeldParts } from '../tools/tool.ts';

/** What keys may do on the board. */
export interface KeyHand {
  readonly session: BoardSession;
  readonly viewpoint: Viewpoint;
  /** Puts back the press in progress; whether there was one. */
  readonly cancelPress: () => boolean;
  readonly askAboutPin: (hole: HoleId, parts: readonly PartId[], further?: readonly HeldParts[]) => void;
  readonly onKeys: () => void;
  readonly onFindings: () => void;
  /** Lays the start of the day under the drawing, or takes it away. */
  readonly onDayStart: () => void;
  readonly holes: HoleHands;
  /** The keys of the instruments, once there are any. */
  readonly instruments: KeyWork | undefined;
}

/** Does what a key means; holding and nudging are the listener's own. */
export function actOnKey(meaning: KeyMeaning, hand: KeyHand): void {
  const { session, viewpoint } = hand;
  switch (meaning.do) {
    case 'undo':
      session.undo();
      break;
    case 'redo':
      session.redo();
      break;
    case 'flip':
      session.flipRouting();
      break;
    case 'keys':
      hand.onKeys();
      break;
    case 'findings':
      hand.onFindings();
      break;
    case 'day start':
      hand.onDayStart();
      break;
    case 'zoom':
      viewpoint.zoom(meaning.factor);
      break;
    case 'fit':
      showAll(hand);
      break;
    case 'let go':
      if (!hand.cancelPress() && !hand.holes.letGo()) session.select({});
      break;
    case 'choose all':
      chooseAll(hand);
      break;
    case 'choose further':
      chooseFurther(meaning.step, hand);
      break;
    case 'take out':
      takeOut(hand);
      break;
    case 'menu':
      openMenuByKey(hand);
      break;
    case 'choose hole':
      chooseHole(meaning.step, hand);
      break;
    case 'choose part':
      choosePart(hand);
      break;
    case 'reverse':
      reverse(hand);
      break;
    default:
  }
}

function showAll({ session, viewpoint }: KeyHand): void {
  const frame = session.frame.get();
  if (frame) viewpoint.fit(frame.plan, frame.routing);
}

function chooseHole(step: 1 | -1, { session, viewpoint }: KeyHand): void {
  const frame = session.frame.get();
  const hole = frame && neighbourInRound(frame.routing, session.selection.get().hole, step);
  if (!frame || hole === undefined) return;
  session.select({ hole });
  viewpoint.show({ kind: 'hole', hole }, frame);
}

function choosePart({ session }: KeyHand): void {
  const [hole, site] = [chosenHole(session), session.frame.get()?.plan.site];
  const { part: now, thing, vertex: at } = session.selection.get();
  if (thing && site) {
    const vertex = nextVertex(site, thing, at);
    session.select(vertex ? { thing, vertex } : { thing });
  } else if (hole) {
    const part = nextPart(hole, now);
    session.select(part === undefined ? { hole: hole.id } : { hole: hole.id, part });
  }
}

function chooseAll({ session }: KeyHand): void {
  const routing = session.frame.get()?.routing;
  if (routing) session.select(choosing(holesInOrder(routing)));
}

/** The next hole is picked out too. */
function chooseFurther(step: 1 | -1, { session, viewpoint }: KeyHand): void {
  const frame = session.frame.get();
  if (!frame) return;
  const selection = session.selection.get();
  const next = neighbourInRound(frame.routing, selection.hole, step);
  if (next === undefined) return;
  session.select(choosing([...chosenHoles(frame.routing, selection).filter((id) => id !== next), next]));
  viewpoint.show({ kind: 'hole', hole: next }, frame);
}

function takeOut({ session }: KeyHand): void {
  const frame = session.frame.get();
  if (!frame) return;
  const selection = session.selection.get();
  // What lies on the land is no routing's: a locked one does not hold it.
  const away = takenAway(frame.plan.site, selection);
  const taken = away ?? takenOut(frame.routing, selection);
  if (taken.kind === 'nothing') return;
  if (frame.routing.locked && !away) session.sayLocked();
  else if (taken.kind === 'refused') session.say(taken.words);
  else if (session.edit(taken.edit) === 'done') session.select(taken.select);
}

/** The menu of what is picked out, where its number stands or as near as the drawing shows it. */
export function openMenuByKey({ session, viewpoint, holes }: Pick<KeyHand, 'session' | 'viewpoint' | 'holes'>): void {
  const frame = session.frame.get();
  const drawing = document.querySelector('.plan__surface')?.getBoundingClientRect();
  const line = frame?.analysis.holes.get(session.selection.get().hole ?? '')?.centreline ?? [];
  if (!frame || !drawing) return;
  const middle = line.length > 0 ? pointAlong(line, polylineLength(line) / 2) : undefined;
  holes.open(placeForKey(drawing, middle && toCanvas(viewpoint.view.get(), middle)));
}

function reverse({ session }: KeyHand): void {
  const [frame, hole] = [session.frame.get(), chosenHole(session)];
  if (!frame || !hole) return;
  if (frame.routing.locked) session.sayLocked();
  else session.edit({ edit: 'reverse hole', routing: frame.routing.id, hole: hole.id });
}

/** The hole picked out, as it lies now. */
export function chosenHole(session: BoardSession): Hole | undefined {
  const { hole } = session.selection.get();
  const routing = session.frame.get()?.routing;
  return routing && hole !== undefined ? holeOf(routing, hole) : undefined;
}
