import { type Base, type BaseId, LIMITS, pointToMillimetre, type SitePoint } from '@loopwright/model';
import { openSlot, type Slot } from '../../live/slot.ts';
import type { Bench, InstrumentPicture } from '../instrument.ts';
import { type OutlineRunning, startOutline } from '../outline/start-outline.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';

/** What the next press places. */
export type BasePart = 'apron' | 'footprint';

/** What is chosen beside the instrument: the part, and the base whose footprints are drawn. */
export interface BaseChoice {
  readonly part: Slot<BasePart>;
  readonly base: Slot<BaseId | undefined>;
}

const APRON = 'Press where golfers gather: walks to and from the base are measured there.';
const FULL = `A board has ${LIMITS.bases} bases at most: remove a candidate that was given up.`;
const FOOTPRINTS_FULL = `A base has ${LIMITS.footprints} footprints at most.`;

/**
 * A base in the hand: the apron is one press and one step, each footprint another. So a base without footprints is whole,
 * and a footprint that is given up takes nothing with it.
 */
export function startBase(bench: Bench, choice: BaseChoice): OutlineRunning {
  const baseNow = (): Base | undefined => bench.written().site.bases.find(({ id }) => id === choice.base.get());
  const isApron = () => choice.part.get() === 'apron' || !baseNow();
  const prompt = openSlot(APRON);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('east, north of the apron');

  const outline = startOutline(bench, {
    shape: () => 'area',
    begins: () =>
      `Press on the first corner of a footprint of ${baseNow()?.name ?? 'the base'}; Esc leaves it without.`,
    editFor: (points) => ({
      edit: 'change base',
      base: choice.base.get() ?? '',
      to: { footprints: [...(baseNow()?.footprints ?? []), points] },
    }),
    refusal: () => ((baseNow()?.footprints.length ?? 0) >= LIMITS.footprints ? FOOTPRINTS_FULL : undefined),
    written: () => copy(),
  });
  const refresh = () => {
    outline.refresh();
    copy();
  };
  const copy = () => {
    prompt.set(isApron() ? APRON : outline.prompt.get());
    picture.set(isApron() ? {} : outline.picture.get());
    entry.set(isApron() ? 'east, north of the apron' : outline.entry?.get());
  };
  const apron = apronWork(bench, {
    show: (at) => picture.set({ dots: [{ at, manner: 'new' }] }),
    written: (id) => {
      choice.base.set(id);
      choice.part.set('footprint');
      refresh();
    },
  });
  const after = <Result>(result: Result): Result => {
    copy();
    return result;
  };
  refresh();
  return {
    prompt,
    picture,
    entry,
    refresh,
    placed: outline.placed,
    hover: (at) => {
      if (isApron()) return apron.hover(at.site);
      outline.hover(at);
      return copy();
    },
    press: (at, hit) => {
      if (isApron()) return placingGesture(at, apron.placing(at.site));
      const gesture = after(outline.press(at, hit));
      return gesture && { ...gesture, move: (now) => after(gesture.move(now)), cancel: () => after(gesture.cancel()) };
    },
    enter: (typed) => (isApron() ? apron.enter(typed) : after(outline.enter?.(typed))),
    finish: () => (isApron() ? bench.say(APRON) : after(outline.finish?.())),
    back: () => (isApron() ? false : after(outline.back?.() ?? false)),
    letGo: () => (isApron() ? false : after(outline.letGo())),
    stop: outline.stop,
  };
}

interface ApronWork {
  readonly show: (at: SitePoint) => void;
  readonly written: (id: BaseId) => void;
}

/** Puts the apron down, as one step. */
function apronWork(bench: Bench, { show, written }: ApronWork) {
  const snapped = (at: SitePoint) => pointToMillimetre(bench.snap(at, { for: 'vertex' }).at);
  const put = (id: BaseId, at: SitePoint) => {
    const count = bench.written().site.bases.length;
    const name = count === 0 ? 'Clubhouse' : `Base ${count + 1}`;
    bench.show({ edit: 'add base', base: { id, name, apron: at, footprints: [] } });
    show(at);
  };
  const write = (id: BaseId) => {
    if (bench.write() !== 'done') return bench.say(FULL);
    bench.select({ thing: { kind: 'base', id } });
    return written(id);
  };
  return {
    hover: (at: SitePoint) => show(snapped(at)),
    placing: (start: SitePoint) => {
      const id = bench.freshId('b');
      put(id, snapped(start));
      return {
        moveTo: (now: { readonly site: SitePoint }) => put(id, snapped(now.site)),
        putBack: () => bench.show(undefined),
        letGo: () => write(id),
      };
    },
    enter: (typed: string): string | undefined => {
      const read = parseTyped(typed, bench.reading().units);
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'length') return 'An apron lies at a place: type metres east and north, e.g. 120.5, 340.';
      const id = bench.freshId('b');
      put(id, read.at);
      return void write(id);
    },
  };
}
