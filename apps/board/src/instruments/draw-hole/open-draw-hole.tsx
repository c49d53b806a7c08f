import { chosenHoles } from '../../tools/chosen-holes.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { DrawHoleStrip } from './DrawHoleStrip.tsx';
import { openDrawHoleOptions } from './draw-hole-options.ts';
import { placeBetween } from './seat-for.ts';
import { startDrawHole } from './start-draw-hole.ts';

/** Draws a hole: tee, turns, green, or back from the green. It takes its place in the round at once. */
export function openDrawHole(): InstrumentEntry {
  const options = openDrawHoleOptions();
  const strip = () => <DrawHoleStrip options={options} />;
  return {
    instrument: {
      name: 'draw hole',
      title: 'Draw hole',
      does: 'Tee, turns, green: a hole with length and par as you go.',
      start: (bench) => {
        const between = placeBetween(bench.routing(), chosenHoles(bench.routing(), bench.selection()));
        if (between) options.place.set(between);
        return startDrawHole(bench, options);
      },
    },
    Options: strip,
  };
}
