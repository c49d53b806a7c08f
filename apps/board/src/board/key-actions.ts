import { type Hole, type HoleId, holeOf, type PartId } from '@loopwright/model';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { KeyWork } from '../instruments/key-work.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { KeyMeaning } from '../tools/keys.ts';
import { neighbourInRound, nextPart } from '../tools/nudge.ts';
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
    case 'keys':
      hand.onKeys();
      break;
    case 'findings':
      hand.onFindings();
      break;
    case 'zoom':
      viewpoint.zoom(meaning.factor);
      break;
    case 'fit':
      showAll(hand);
      break;
    case 'let go':
      if (!hand.cancelPress()) session.select({});
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
  const hole = chosenHole(session);
  if (!hole) return;
  const part = nextPart(hole, session.selection.get().part);
  session.select(part === undefined ? { hole: hole.id } : { hole: hole.id, part });
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
