/**
 * Where keys of one letter or sign are heard. Whoever speaks to the machine, or presses keys by accident, turns them off
 * or keeps them to the drawing: WCAG 2.2, 2.1.4 (character key shortcuts).
 */
export type SingleKeys = 'anywhere' | 'on the drawing' | 'off';

export const SINGLE_KEYS: readonly SingleKeys[] = ['anywhere', 'on the drawing', 'off'];

interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** What was kept, read again; anything else is the usual. */
export function parseSingleKeys(kept: string | undefined): SingleKeys {
  return SINGLE_KEYS.find((each) => each === kept) ?? 'anywhere';
}

/** Whether a key press is heard. @param onDrawing  whether the drawing itself has the keyboard */
export function isHeard({ key, ctrlKey, metaKey }: Pressed, keys: SingleKeys, onDrawing: boolean): boolean {
  const isSingle = [...key].length === 1 && key !== ' ' && !ctrlKey && !metaKey;
  if (!isSingle || keys === 'anywhere') return true;
  return keys === 'on the drawing' && onDrawing;
}
