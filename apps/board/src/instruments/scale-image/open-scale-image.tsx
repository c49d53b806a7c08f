import { openSlot, type Slot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { Bench, Running } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { startByDistance } from './by-distance.ts';
import { startLayOver } from './lay-over.ts';

type Way = 'distance' | 'lay over';

const WAYS = [
  { key: 'distance', words: 'By a known distance' },
  { key: 'lay over', words: 'Over what is there' },
] as const;

const STARTS: Readonly<Record<Way, (bench: Bench) => Running>> = {
  distance: startByDistance,
  'lay over': startLayOver,
};

/** Gives a picture its size: by two points and a known distance, or by points that are on the drawing already. */
export function openScaleImage(): InstrumentEntry {
  const way = openSlot<Way>('distance');
  const options = () => <ScaleOptions way={way} />;
  return {
    instrument: {
      name: 'scale image',
      title: 'Scale picture',
      does: 'Gives a picture its true size: by a known distance, or over what is drawn.',
      start: (bench) => startEither(bench, way),
    },
    Options: options,
  };
}

/** Whichever way is chosen now; changing over lets go of what is half done. */
function startEither(bench: Bench, way: Slot<Way>): Running {
  let running = STARTS[way.get()](bench);
  const prompt = openSlot(running.prompt.get());
  const picture = openSlot(running.picture.get());
  const entry = openSlot(running.entry?.get());
  const follow = () => {
    const take = () => {
      prompt.set(running.prompt.get());
      picture.set(running.picture.get());
      entry.set(running.entry?.get());
    };
    take();
    return [running.prompt, running.picture, ...(running.entry ? [running.entry] : [])].map((one) =>
      one.onChange(take),
    );
  };
  let stops = follow();
  const stopWay = way.onChange(() => {
    running.letGo();
    for (const stop of stops) stop();
    running = STARTS[way.get()](bench);
    stops = follow();
  });
  return {
    prompt,
    picture,
    entry,
    hover: (at) => running.hover(at),
    press: (at, hit) => running.press(at, hit),
    typing: (typed) => running.typing?.(typed),
    enter: (typed) => running.enter?.(typed),
    finish: () => running.finish?.(),
    back: () => running.back?.() ?? false,
    letGo: () => running.letGo(),
    stop: () => {
      stopWay();
      for (const stop of stops) stop();
      running.stop();
    },
  };
}

function ScaleOptions({ way }: { readonly way: Slot<Way> }) {
  return <Choices label="How it gets its size" choices={WAYS} chosen={useWatched(way)} onChoose={way.set} />;
}
