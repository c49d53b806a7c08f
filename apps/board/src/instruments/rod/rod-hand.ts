import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import type { Bench, InstrumentPicture, Snapped } from '../instrument.ts';
import { leaveHole } from '../leave-hole.ts';
import { addSketch, sayIfFull } from '../sketches/sketching.ts';
import { jointsOf, type Rod, straightRod, withLegs } from './rod.ts';
import type { RodChoice } from './rod-choice.ts';
import { swungBy } from './rod-snap.ts';
import { type Hold, rodFigures, rodPrompt } from './rod-words.ts';

/** A rod in the hand, or lying where it was put; everybody sees it. */
export interface RodHand {
  readonly prompt: Watched<string>;
  readonly picture: Watched<InstrumentPicture>;
  readonly entry: Watched<string | undefined>;
  readonly hold: Watched<Hold>;
  rod(): Rod | undefined;
  /** Takes hold in that way, without moving anything. */
  take(hold: Hold): void;
  /** Pins it there, straight, or as it was bent when it lay before. */
  pin(at: Snapped): void;
  swing(joint: number, at: SitePoint): void;
  /** As it was, or as it was typed. */
  set(rod: Rod | undefined): void;
  /** Other legs or another end were chosen. */
  follow(): void;
  leaveHole(): void;
  leaveLying(): void;
}

export function openRodHand(bench: Bench, choice: RodChoice): RodHand {
  const hold = openSlot<Hold>({ doing: 'pin' });
  const prompt = openSlot(rodPrompt(hold.get(), choice.end.get()));
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);
  let rod: Rod | undefined;
  let snapped: Snapped | undefined;
  let isPointed = false;
  let id = bench.freshId('k');

  /** From the pin on: the chosen legs run from the tee. */
  const legs = () => (choice.end.get() === 'tee' ? choice.legs.get() : choice.legs.get().toReversed());
  const inPlay = (joints: readonly SitePoint[]) => (choice.end.get() === 'tee' ? joints : joints.toReversed());
  const refresh = () => {
    const joints = rod ? jointsOf(rod) : [];
    bench.show(rod && addSketch(bench, id, { kind: 'rod', points: joints.map(pointToMillimetre) }));
    prompt.set(rodPrompt(hold.get(), choice.end.get()));
    entry.set(rod ? 'bearing, or legs (265 + 140)' : 'east, north of the pin, or legs (265 + 140)');
    picture.set({
      dots: joints.map((at, index) => ({ at, manner: index === 0 ? 'new' : 'grip' })),
      ...(snapped?.guide ? { lines: [{ points: snapped.guide, manner: 'guide' }] } : {}),
      atPointer: [
        ...rodFigures(inPlay(joints), bench.plan().teeSets[0], bench.reading().units),
        ...(snapped?.because ? [snapped.because] : []),
      ],
    });
  };
  const take = (next: Hold) => {
    hold.set(next);
    snapped = undefined;
    refresh();
  };
  const putUp = () => {
    rod = undefined;
    id = bench.freshId('k');
    take({ doing: 'pin' });
  };
  refresh();
  return {
    prompt,
    picture,
    entry,
    hold,
    rod: () => rod,
    take,
    pin: (at) => {
      isPointed &&= rod !== undefined;
      rod = rod ? { ...rod, pin: at.at } : straightRod(at.at, legs());
      snapped = at;
      refresh();
    },
    swing: (joint, at) => {
      if (!rod) return;
      const swung = swungBy(bench, rod, joint, at, choice.end.get());
      rod = swung.rod;
      isPointed = true;
      snapped = swung.snapped;
      refresh();
    },
    set: (next) => {
      rod = next;
      isPointed = true;
      snapped = undefined;
      if (rod) refresh();
      else putUp();
    },
    follow: () => {
      if (rod) rod = withLegs(rod, legs());
      refresh();
    },
    leaveHole: () => {
      if (!rod) return bench.say('Pin the rod first: press on the drawing.');
      // A second press on the pin is a slip of the hand: nobody has said yet where the hole goes.
      if (!isPointed) return bench.say('Point the rod first, or type its bearing.');
      const left = leaveHole(bench, inPlay(jointsOf(rod)));
      if (left.kind === 'left') return putUp();
      bench.say(left.why);
      refresh();
    },
    leaveLying: () => {
      if (!rod) return bench.say('Pin the rod first: press on the drawing.');
      refresh();
      sayIfFull(bench, bench.write());
      putUp();
    },
  };
}
