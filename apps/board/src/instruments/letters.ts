import type { InstrumentName } from './instrument-name.ts';

/** The keys that take instruments while the drawing has the keyboard, chosen together so that none means two things. */
export const INSTRUMENT_LETTERS: Readonly<Partial<Record<InstrumentName, string>>> = {
  'draw hole': 'd',
  'site mark': 'm',
  rod: 's',
  reach: 'a',
  'measure line': 'l',
  'measure area': 'e',
  pencil: 'i',
  'clearance ring': 'c',
  waypoints: 'w',
  boundary: 'o',
  feature: 'f',
};

/** Switches snapping off and on. */
export const SNAP_LETTER = 'n';

/** The instrument a letter takes; `undefined` for any other key. */
export function instrumentOf(letter: string): InstrumentName | undefined {
  const found = Object.entries(INSTRUMENT_LETTERS).find(([, own]) => own === letter);
  return found && isName(found[0]) ? found[0] : undefined;
}

const isName = (name: string): name is InstrumentName => name in INSTRUMENT_LETTERS;
