import type { CanvasPoint, SitePoint } from '@loopwright/model';
import { openSlot } from '../live/slot.ts';
import type { PointerAt } from '../tools/tool.ts';
import type { InstrumentPicture } from './instrument.ts';
import type { Held, InstrumentHand } from './instrument-hand.ts';

/** A hand with an instrument that writes down what it is told, one metre a pixel. */
export function openTestHand(finger: 'aims' | 'strokes' = 'aims') {
  const told: string[] = [];
  const tell = (what: string, at?: PointerAt) => {
    told.push(at ? `${what} ${at.site.x} ${at.site.y}` : what);
  };
  let drawn = true;
  const held: Held = {
    entry: { instrument: { name: 'measure line', title: '', does: '', finger, start: () => held.running } },
    running: {
      prompt: openSlot(''),
      picture: openSlot<InstrumentPicture>({ atPointer: ['120 m'] }),
      entry: openSlot<string | undefined>('a length'),
      hover: (at) => tell('hover', at),
      press: (at) => {
        tell('press', at);
        return undefined;
      },
      finish: () => tell('finish'),
      back: () => {
        tell('back');
        return true;
      },
      letGo: () => {
        tell('let go');
        return drawn;
      },
      stop: () => tell('stop'),
    },
  };
  const slot = openSlot<Held | undefined>(held);
  const hand: InstrumentHand = {
    entries: [],
    held: slot,
    snapping: openSlot(true),
    cross: openSlot<SitePoint | undefined>(undefined),
    point: openSlot<CanvasPoint | undefined>(undefined),
    finger: openSlot<SitePoint | undefined>(undefined),
    heard: openSlot(''),
    free: openSlot(false),
    paper: openSlot(false),
    take: (name) => tell(`take ${name}`),
    putAway: () => slot.set(undefined),
    setSnapping: (on) => tell(`snap ${on ? 'on' : 'off'}`),
    snapVertex: (at) => at,
    lend: () => () => undefined,
    drawing: () => undefined,
    lendEntry: () => () => undefined,
    toEntry: () => {
      tell('to entry');
      return true;
    },
    goOnFrom: () => undefined,
    back: () => held.running.back?.() ?? false,
    letGo: () => held.running.letGo(),
    stop: () => undefined,
  };
  return {
    hand,
    told,
    nothingIsDrawn: () => {
      drawn = false;
    },
  };
}
