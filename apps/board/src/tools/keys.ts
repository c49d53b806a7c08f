/** What a key means on the board. */
export type KeyMeaning =
  | { readonly do: 'nudge'; readonly x: number; readonly y: number }
  | { readonly do: 'zoom'; readonly factor: number }
  | { readonly do: 'choose hole' | 'choose further'; readonly step: 1 | -1 }
  | { readonly do: 'choose all' | 'take out' | 'menu' }
  | {
      readonly do:
        | 'choose part'
        | 'fit'
        | 'reverse'
        | 'before'
        | 'findings'
        | 'let go'
        | 'undo'
        | 'redo'
        | 'keys'
        | 'flip'
        | 'day start';
    };

interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

const PLAIN: Readonly<Record<string, KeyMeaning>> = {
  '[': { do: 'choose hole', step: -1 },
  ']': { do: 'choose hole', step: 1 },
  '{': { do: 'choose further', step: -1 },
  '}': { do: 'choose further', step: 1 },
  delete: { do: 'take out' },
  backspace: { do: 'take out' },
  contextmenu: { do: 'menu' },
  p: { do: 'choose part' },
  '0': { do: 'fit' },
  '+': { do: 'zoom', factor: 1.25 },
  '=': { do: 'zoom', factor: 1.25 },
  '-': { do: 'zoom', factor: 0.8 },
  r: { do: 'reverse' },
  b: { do: 'before' },
  h: { do: 'findings' },
  g: { do: 'day start' },
  v: { do: 'flip' },
  escape: { do: 'let go' },
  '?': { do: 'keys' },
};

/** Opens and closes the drawer, wherever nothing is being typed. */
export const DRAWER_KEY = 't';

/** Signs that some keyboards make with AltGr or Option: however they are made, they are meant. */
const SIGNS = '[]{}';

/** Metres an arrow key moves what is picked out. */
export const NUDGE = { plain: 1, shift: 10 } as const;

/** The meaning of a key press; `undefined` leaves it to the browser. */
export function meaningOf(pressed: Pressed): KeyMeaning | undefined {
  const key = pressed.key.toLowerCase();
  // With Ctrl and Alt together a screen reader or AltGr is meant, unless it made one of our signs.
  if (pressed.altKey) return SIGNS.includes(key) ? PLAIN[key] : undefined;
  if (pressed.ctrlKey || pressed.metaKey) {
    if (key === 'a') return { do: 'choose all' };
    if (key === 'z') return { do: pressed.shiftKey ? 'redo' : 'undo' };
    return key === 'y' ? { do: 'redo' } : undefined;
  }
  if (key === 'f10') return pressed.shiftKey ? { do: 'menu' } : undefined;
  const arrow = ARROWS[pressed.key];
  if (arrow) {
    const metres = pressed.shiftKey ? NUDGE.shift : NUDGE.plain;
    return { do: 'nudge', x: arrow[0] * metres, y: arrow[1] * metres };
  }
  return PLAIN[key];
}

/** Meanings that work wherever the keyboard is, except in a field being typed in. The others belong to the drawing. */
export function isEverywhere(meaning: KeyMeaning): boolean {
  return ['undo', 'redo', 'keys', 'before', 'findings', 'flip', 'choose hole'].includes(meaning.do);
}
