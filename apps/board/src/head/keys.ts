/** A line of the sheet of keys. */
export interface KeyRow {
  /** As the sheet says it. */
  readonly press: string;
  readonly does: string;
  /** The key presses it speaks of, as 'Shift+Control+z': a test holds that the board does them, and no others. */
  readonly on: readonly string[];
}

export interface KeyGroup {
  readonly where: string;
  readonly rows: readonly KeyRow[];
}

const row = (press: string, does: string, ...on: readonly string[]): KeyRow => ({ press, does, on });
const ARROWS = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'];
const shifted = (keys: readonly string[]) => keys.map((key) => `Shift+${key}`);

/** Keys that work wherever nothing is being typed. */
export const ANYWHERE: KeyGroup = {
  where: 'Anywhere',
  rows: [
    row('Ctrl or Cmd + Z', 'undo one’s own last step', 'Control+z', 'Meta+z'),
    row(
      'Ctrl or Cmd + Y, or Shift + Ctrl or Cmd + Z',
      'do it again',
      'Control+y',
      'Meta+y',
      'Shift+Control+z',
      'Shift+Meta+z',
    ),
    row('[ and ]', 'choose the hole before or after', '[', ']', 'Alt+[', 'Alt+]'),
    row('V', 'flip between the two routings shown last', 'v'),
    row('hold B', 'see the plan as it was before the change', 'b'),
    row('H', 'hide all findings, or show them', 'h'),
    row('T', 'open or close the drawer', 't'),
    row('?', 'this sheet', '?'),
  ],
};

export const ON_THE_DRAWING: KeyGroup = {
  where: 'On the drawing',
  rows: [
    row('{ and }', 'choose the hole before or after too', '{', '}', 'Alt+{', 'Alt+}'),
    row('Ctrl or Cmd + A', 'choose all holes', 'Control+a', 'Meta+a'),
    row('P', 'choose the next part of the hole: tee, turn point, green, then all of it; or the next vertex', 'p'),
    row(
      'arrow keys',
      'move what is chosen a metre, with Shift ten; the paper when nothing is chosen',
      ...ARROWS,
      ...shifted(ARROWS),
    ),
    row('Menu key or Shift + F10', 'everything that can be done with it', 'ContextMenu', 'Shift+F10'),
    row(
      'Delete or Backspace',
      'take out what is chosen: holes, a turn point, a vertex, a thing on the land; propose the chosen tee again',
      'Delete',
      'Backspace',
    ),
    row('R', 'play the chosen hole the other way', 'r'),
    row('G', 'show where things lay as the day began, or hide it', 'g'),
    row('+ and −', 'nearer, farther', '+', '=', '-'),
    row('0', 'show the whole site', '0'),
    row('Escape', 'put a drag back without a trace; else choose nothing', 'Escape'),
  ],
};

export const TO_TAKE_UP: KeyGroup = {
  where: 'Instruments, from the drawing',
  rows: [
    row('D', 'draw hole', 'd'),
    row('M', 'site mark', 'm'),
    row('S', 'rod', 's'),
    row('A', 'reach: arcs of who gets where', 'a'),
    row('L and E', 'measure a line, an area', 'l', 'e'),
    row('I', 'pencil', 'i'),
    row('C', 'clearance ring', 'c'),
    row('W', 'waypoints of a walk', 'w'),
    row('O and F', 'boundary, feature', 'o', 'f'),
    row('N', 'snapping off or on', 'n'),
  ],
};

export const INSTRUMENT_HELD: KeyGroup = {
  where: 'With an instrument in the hand',
  rows: [
    row(
      'arrow keys',
      'bring a cross, then move it ten metres, with Shift one; it says where it is',
      ...ARROWS,
      ...shifted(ARROWS),
    ),
    row('Space', 'press at the cross; without one, move the paper while it is held', ' '),
    row('Enter', 'press at the cross and make it the last: the green of a hole, say', 'Enter', 'Shift+Enter'),
    row(
      'digits, = or (',
      'type a length (380), all of it (=380), with a bearing (380 @ 045), or a place: (120.5, 40)',
      ...'0123456789=(',
      ...shifted([...'0123456789=(']),
    ),
    row(
      'Backspace, or Ctrl or Cmd + Z',
      'one step back in what is drawn',
      'Backspace',
      'Shift+Backspace',
      'Control+z',
      'Meta+z',
    ),
    row('Escape', 'put back what is half drawn; again, put the instrument away', 'Escape', 'Shift+Escape'),
    row('Alt', 'snap to nothing, while it is held', 'Alt', 'Alt+Alt', 'Shift+Alt'),
  ],
};

export const ON_A_BEAD: KeyGroup = {
  where: 'On a hole of the round',
  rows: [
    row('↑ and ↓', 'go from hole to hole; with Shift, choose several', 'ArrowUp', 'ArrowDown'),
    row('→', 'go to the walk from its green', 'ArrowRight'),
    row('Enter or Space', 'pick up what is chosen', 'Enter', ' '),
    row('Delete', 'take it out to the spare tray', 'Delete'),
  ],
};

export const ON_A_HELD_BEAD: KeyGroup = {
  where: 'While a hole of the round is held',
  rows: [
    row('↑ and ↓', 'move it, with what that does shown at once', 'ArrowUp', 'ArrowDown'),
    row('Enter or Space', 'put it down', 'Enter', ' '),
    row('Escape or Tab', 'leave it where it was', 'Escape', 'Tab'),
  ],
};

export const ON_A_WALK: KeyGroup = {
  where: 'On a walk of the round',
  rows: [
    row('↑ and ↓', 'go from walk to walk', 'ArrowUp', 'ArrowDown'),
    row('← or Escape', 'back to the hole', 'ArrowLeft', 'Escape'),
  ],
};

export const IN_THE_DRAWER: KeyGroup = {
  where: 'In the drawer, menus and fields',
  rows: [
    row('← and →, Home and End', 'on a tab: the sheet before or after, the first, the last'),
    row('Enter', 'take in what was typed; on the card, go on to the next line'),
    row('↑ and ↓', 'on a place: a metre less or more; in a menu or list: the line before or after'),
    row('Escape', 'in a field: leave it as it was; in a menu or dialog: close it'),
  ],
};

/** What a pointer does with a key held; the menu and the table of holes and points do the same without a pointer. */
export const WITH_THE_POINTER: KeyGroup = {
  where: 'With the pointer',
  rows: [
    row('Shift or Ctrl and a press, or a frame drawn with Shift', 'choose several holes'),
    row('second button, or a long press', 'what can be done with it; with an instrument: this point is the last'),
    row('double press', 'take out a turn point or a waypoint; with an instrument: this point is the last'),
    row('Alt and a press', 'take out a turn point or a waypoint'),
    row('Alt while dragging', 'snap to nothing; in the round: swap with the hole under the pointer'),
    row('Space or the middle button while dragging', 'move the paper'),
  ],
};

/** Every key of the board, by where it works. */
export const KEYS: readonly KeyGroup[] = [
  ANYWHERE,
  ON_THE_DRAWING,
  TO_TAKE_UP,
  INSTRUMENT_HELD,
  ON_A_BEAD,
  ON_A_HELD_BEAD,
  ON_A_WALK,
  IN_THE_DRAWER,
  WITH_THE_POINTER,
];
