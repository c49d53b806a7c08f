import { REACH } from '../../tools/hit.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { jointAt, swung } from './rod.ts';
import type { RodChoice } from './rod-choice.ts';
import { openRodHand, type RodHand } from './rod-hand.ts';
import type { Hold } from './rod-words.ts';
import { parseTypedRod } from './typed-rod.ts';

export interface RunningRod extends Running {
  readonly hand: RodHand;
}

/**
 * A rod pinned at one end of a hole and swung about it. A press takes hold and, let go on the spot, leaves what it took
 * following the pointer until the next press: no drag is needed. A drag does it in one.
 */
export function startRod(bench: Bench, choice: RodChoice): RunningRod {
  const hand = openRodHand(bench, choice);
  const stops = [choice.legs.onChange(hand.follow), choice.end.onChange(() => hand.set(undefined))];
  const snapPin = (at: PointerAt) => bench.snap(at.site, { for: choice.end.get() });
  const follow = (hold: Hold, at: PointerAt) => {
    if (hold.doing === 'carry') hand.pin(snapPin(at));
    if (hold.doing === 'swing') hand.swing(hold.joint, at.site);
  };

  return {
    hand,
    prompt: hand.prompt,
    picture: hand.picture,
    entry: hand.entry,
    hover: (at) => follow(hand.hold.get(), at),
    press: (at) => {
      const [before, was] = [hand.rod(), hand.hold.get()];
      const putBack = () => {
        hand.take(was);
        hand.set(before);
      };
      if (!before) {
        hand.pin(snapPin(at));
        hand.take({ doing: 'swing', joint: 0 });
      } else if (was.doing === 'lie') {
        const joint = jointAt(before, at.site, REACH[at.kind] / bench.scale());
        const hold = takenBy(joint);
        hand.take(hold);
        // Pressed beside the rod: it comes round to the pointer. On a joint: it stays until it is moved.
        if (joint === undefined) follow(hold, at);
      } else {
        follow(was, at);
        hand.take({ doing: 'lie' });
        return undefined;
      }
      return placingGesture(at, {
        moveTo: (now) => follow(hand.hold.get(), now),
        putBack,
        letGo: (how) => how === 'dragged' && hand.take({ doing: 'lie' }),
      });
    },
    enter: (typed) => takeTyped(hand, choice, parseTypedRod(typed, bench.reading().units)),
    finish: hand.leaveHole,
    back: () => {
      const hold = hand.hold.get();
      if (hold.doing === 'pin') return false;
      if (hold.doing === 'swing' || hold.doing === 'lie') hand.set(undefined);
      else hand.take({ doing: 'lie' });
      return true;
    },
    letGo: () => {
      const had = hand.rod() !== undefined;
      hand.set(undefined);
      return had;
    },
    stop: () => {
      for (const stop of stops) stop();
      bench.show(undefined);
    },
  };
}

/** What a press on the lying rod takes hold of: the leg before a joint, the pin, or all of it. */
function takenBy(joint: number | undefined): Hold {
  if (joint === 0) return { doing: 'carry' };
  return { doing: 'swing', joint: joint === undefined ? 0 : joint - 1 };
}

/** Does with the rod what was typed: other legs, another place of its pin, or the way it points. Answers why not. */
function takeTyped(hand: RodHand, choice: RodChoice, read: ReturnType<typeof parseTypedRod>): string | undefined {
  const [rod, hold] = [hand.rod(), hand.hold.get()];
  if (read.kind === 'wrong') return read.why;
  if (read.kind === 'legs') choice.legs.set(read.legs);
  else if (read.kind === 'place') {
    hand.pin({ at: read.at });
    if (hold.doing !== 'lie') hand.take({ doing: 'swing', joint: 0 });
  } else {
    if (!rod) return 'Pin the rod first: press on the drawing, or type where: 120.5, 40.';
    hand.set(swung(rod, hold.doing === 'swing' ? hold.joint : 0, read.way));
    hand.take({ doing: 'lie' });
  }
  return undefined;
}
