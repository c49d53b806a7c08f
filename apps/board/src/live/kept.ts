/** What this page keeps on this machine between visits; never a secret. */
export type KeptName =
  | 'name'
  | 'units'
  | 'tee set'
  | 'rods'
  | 'drawer'
  | 'folded loops'
  | 'instrument names'
  | 'single keys';

/** `undefined` where nothing was kept, or the browser keeps nothing. */
export function readKept(name: KeptName): string | undefined {
  try {
    return window.localStorage.getItem(`loopwright ${name}`) ?? undefined;
  } catch {
    return undefined; // a browser that forbids storage: everything works, for this visit
  }
}

/** Keeps a value; a browser that keeps nothing asks again next time. */
export function writeKept(name: KeptName, value: string): 'kept' | 'not kept' {
  try {
    window.localStorage.setItem(`loopwright ${name}`, value);
    return 'kept';
  } catch {
    return 'not kept';
  }
}
