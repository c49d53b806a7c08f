import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { openViewpoint } from '../drawing/viewpoint.ts';
import { openTestHand } from '../instruments/hand.test-hand.ts';
import { openKeyWork } from '../instruments/key-work.ts';
import { INSTRUMENT_LETTERS, SNAP_LETTER } from '../instruments/letters.ts';
import { openSlot } from '../live/slot.ts';
import { BEAD_KEYS, HELD_BEAD_KEYS, WALK_KEYS } from '../round/bead-keys.ts';
import { DRAWER_KEY, isEverywhere, meaningOf } from '../tools/keys.ts';
import {
  ANYWHERE,
  INSTRUMENT_HELD,
  type KeyGroup,
  ON_A_BEAD,
  ON_A_HELD_BEAD,
  ON_A_WALK,
  ON_THE_DRAWING,
  TO_TAKE_UP,
} from './keys.ts';

const NAMED = [
  ...['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Enter', 'Tab', 'Escape', 'Delete', 'Backspace', 'Insert'],
  ...['Home', 'End', 'PageUp', 'PageDown', 'ContextMenu', 'Alt', 'F1', 'F2', 'F5', 'F6', 'F7', 'F10', 'F11', 'F12'],
];
const PRINTED = Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index)).filter(
  (sign) => sign === sign.toLowerCase(),
);
const MODIFIERS = ['', 'Shift+', 'Control+', 'Meta+', 'Alt+', 'Shift+Control+', 'Shift+Meta+', 'Control+Alt+'];

const pressed = (chord: string) => {
  const key = chord.replace(/^((?:Shift|Control|Meta|Alt)\+)*(?=.)/, '');
  const held = chord.slice(0, chord.length - key.length);
  return {
    key,
    shiftKey: held.includes('Shift'),
    ctrlKey: held.includes('Control'),
    metaKey: held.includes('Meta'),
    altKey: held.includes('Alt'),
  };
};

/** Every press that may be; a printed sign with Shift alone is another sign, and that one is tried by itself. */
const EVERY = MODIFIERS.flatMap((held) =>
  [...NAMED, ...PRINTED].filter((key) => held !== 'Shift+' || key.length > 1).map((key) => `${held}${key}`),
);
/** Shift that changes nothing is not said: Shift and Delete is Delete. */
const isSameWithoutShift = (chord: string) =>
  chord.startsWith('Shift+') &&
  isDeepStrictEqual(meaningOf(pressed(chord)), meaningOf(pressed(chord.slice('Shift+'.length))));
const chordsOf = (...groups: readonly KeyGroup[]) => groups.flatMap(({ rows }) => rows.flatMap(({ on }) => on));
const sorted = (chords: readonly string[]) => [...new Set(chords)].sort();

test('the sheet says every key that the board and the drawing have, and no others', () => {
  const meant = EVERY.filter((chord) => meaningOf(pressed(chord)) && !isSameWithoutShift(chord));
  // AltGr is reported with Ctrl on one system and without it on another.
  const said = chordsOf(ANYWHERE, ON_THE_DRAWING).flatMap((chord) =>
    chord.startsWith('Alt+') ? [chord, `Control+${chord}`] : [chord],
  );
  expect(sorted(said)).toEqual(sorted([...meant, DRAWER_KEY]));
});

test('keys said to work anywhere do, the others are the drawing’s', () => {
  for (const chord of chordsOf(ANYWHERE)) {
    const meaning = meaningOf(pressed(chord));
    expect(chord === DRAWER_KEY || (meaning && isEverywhere(meaning)), chord).toBe(true);
  }
  for (const chord of chordsOf(ON_THE_DRAWING)) {
    const meaning = meaningOf(pressed(chord));
    expect(meaning && isEverywhere(meaning), chord).toBe(false);
  }
});

test('one line of the sheet speaks of one meaning', () => {
  for (const { does, on } of [...ANYWHERE.rows, ...ON_THE_DRAWING.rows]) {
    expect(new Set(on.map((chord) => meaningOf(pressed(chord))?.do)).size, does).toBe(1);
  }
});

test('the letters of the instruments are all said, and none means a second thing', () => {
  expect(sorted(chordsOf(TO_TAKE_UP))).toEqual(sorted([...Object.values(INSTRUMENT_LETTERS), SNAP_LETTER]));
  const plain = chordsOf(ANYWHERE, ON_THE_DRAWING, TO_TAKE_UP);
  expect(plain).toHaveLength(new Set(plain).size);
});

test('the sheet says every key of an instrument in the hand', () => {
  const letters = chordsOf(TO_TAKE_UP);
  const taken = EVERY.filter((chord) => {
    const { hand } = openTestHand();
    const session = { frame: openSlot(undefined), say: () => undefined };
    const work = openKeyWork(hand, { session, viewpoint: openViewpoint(), where: () => '' });
    return !letters.includes(chord) && work.down(pressed(chord));
  });
  // A sign with Shift is the sign itself: where it stands on a keyboard differs.
  const said = chordsOf(INSTRUMENT_HELD).filter((chord) => !/^Shift\+[0-9=(]$/.test(chord));
  expect(sorted(said)).toEqual(sorted(taken));
});

test('the sheet says every key of the round', () => {
  expect(sorted(chordsOf(ON_A_BEAD))).toEqual(Object.keys(BEAD_KEYS).sort());
  expect(sorted(chordsOf(ON_A_HELD_BEAD))).toEqual(Object.keys(HELD_BEAD_KEYS).sort());
  expect(sorted(chordsOf(ON_A_WALK))).toEqual(Object.keys(WALK_KEYS).sort());
});

test('no key of a browser or a screen reader is taken', () => {
  const theirs = [
    ...['Alt+ArrowLeft', 'Alt+ArrowRight', 'Control+Alt+ArrowRight', 'F1', 'F5', 'F6', 'F7', 'F11', 'F12', 'Tab'],
    ...['Control+f', 'Control+l', 'Control+n', 'Control+p', 'Control+r', 'Control+s', 'Control+t', 'Control+w'],
    ...['Control++', 'Control+-', 'Control+0', 'Meta+[', 'Meta+]', 'Insert', 'Control+Alt+a', 'Control+Alt+ '],
  ];
  const taken = chordsOf(ANYWHERE, ON_THE_DRAWING, TO_TAKE_UP, INSTRUMENT_HELD);
  for (const chord of theirs) {
    expect(taken, chord).not.toContain(chord);
    expect(meaningOf(pressed(chord)), chord).toBeUndefined();
  }
});
