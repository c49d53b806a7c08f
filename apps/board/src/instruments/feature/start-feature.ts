import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import type { Bench, InstrumentPicture } from '../instrument.ts';
import { type OutlineRunning, startOutline } from '../outline/start-outline.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { featureEdit } from './drawn-feature.ts';
import type { FeatureChoice, FeatureForm } from './feature-choice.ts';

const FULL = 'The board took no further feature: it has as many, or as many points, as it can hold. Nothing is lost.';
const FIRST: Readonly<Record<FeatureForm, string>> = {
  area: 'press on its first corner',
  line: 'press where the line begins',
  point: 'press where it stands',
};

const capital = (word: string) => word.slice(0, 1).toUpperCase() + word.slice(1);

/** A feature in the hand: an area or a line corner by corner, or a single place by one press. */
export function startFeature(bench: Bench, choice: FeatureChoice): OutlineRunning {
  let id = bench.freshId('f');
  const form = choice.form.get;
  const begins = () => `${capital(choice.kind.get())}: ${FIRST[form()]}.`;
  const edit = (points: readonly SitePoint[]) => featureEdit(id, choice.kind.get(), form(), points);
  const written = (result: ReturnType<Bench['write']>) => {
    if (result === 'done') bench.select({ thing: { kind: 'feature', id } });
    else bench.say(FULL);
    id = bench.freshId('f');
  };
  const outline = startOutline(bench, {
    shape: () => (form() === 'line' ? 'line' : 'area'),
    begins,
    editFor: edit,
    written,
  });
  const place = placeWork(bench, { edit: (at) => edit([at]), written });
  return joined(outline, place, form, begins);
}

interface PlaceWork {
  readonly picture: ReturnType<typeof openSlot<InstrumentPicture>>;
  hover(at: SitePoint): void;
  placing(start: SitePoint): Parameters<typeof placingGesture>[1];
  enter(typed: string): string | undefined;
}

interface PlaceParts {
  readonly edit: (at: SitePoint) => ReturnType<typeof featureEdit>;
  readonly written: (result: ReturnType<Bench['write']>) => void;
}

/** A single place: one press, one step. */
function placeWork(bench: Bench, { edit, written }: PlaceParts): PlaceWork {
  const picture = openSlot<InstrumentPicture>({});
  const put = (at: SitePoint) => {
    const snapped = bench.snap(at, { for: 'vertex' });
    picture.set({ dots: [{ at: snapped.at, manner: 'new' }], atPointer: snapped.because ? [snapped.because] : [] });
    return snapped.at;
  };
  const show = (at: SitePoint) => bench.show(edit(pointToMillimetre(at)));
  return {
    picture,
    hover: put,
    placing: (start) => {
      show(put(start));
      return {
        moveTo: ({ site }) => show(put(site)),
        putBack: () => bench.show(undefined),
        letGo: () => written(bench.write()),
      };
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'length') return 'It stands at a place: type metres east and north, e.g. 120.5, 340.';
      show(read.at);
      return void written(bench.write());
    },
  };
}

/** Outline, line and single place as one instrument: the form that is chosen now does the work. */
function joined(outline: OutlineRunning, place: PlaceWork, form: () => FeatureForm, begins: () => string) {
  const prompt = openSlot(begins());
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('east, north');
  const isPlace = () => form() === 'point';
  const copy = () => {
    prompt.set(isPlace() ? begins() : outline.prompt.get());
    picture.set(isPlace() ? place.picture.get() : outline.picture.get());
    entry.set(isPlace() ? 'east, north' : outline.entry?.get());
  };
  const after = <Result>(result: Result): Result => {
    copy();
    return result;
  };
  const running: OutlineRunning = {
    prompt,
    picture,
    entry,
    placed: outline.placed,
    refresh: () => {
      if (isPlace()) outline.letGo();
      else outline.refresh();
      copy();
    },
    hover: (at) => after(isPlace() ? place.hover(at.site) : outline.hover(at)),
    press: (at, hit) => {
      const gesture = isPlace() ? placingGesture(at, place.placing(at.site)) : outline.press(at, hit);
      copy();
      return (
        gesture && {
          cursor: gesture.cursor,
          move: (now) => after(gesture.move(now)),
          end: (now) => after(gesture.end(now)),
          cancel: () => after(gesture.cancel()),
        }
      );
    },
    enter: (typed) => after(isPlace() ? place.enter(typed) : outline.enter?.(typed)),
    finish: () => (isPlace() ? undefined : after(outline.finish?.())),
    back: () => after(outline.back?.() ?? false),
    letGo: () => after(outline.letGo()),
    stop: outline.stop,
  };
  copy();
  return running;
}
