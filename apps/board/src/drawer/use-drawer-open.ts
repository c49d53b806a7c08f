import { useCallback, useEffect, useState } from 'react';
import { readKept, writeKept } from '../live/kept.ts';
import { DRAWER_KEY } from '../tools/keys.ts';
import { isHeard, parseSingleKeys } from '../tools/single-keys.ts';

const isBusy = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.closest('input, textarea, select, [role="dialog"], [role="menu"]') !== null);

const isOnDrawing = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('.plan') !== null;

/** Whether the drawer is open, kept on this machine; T opens and closes it wherever nothing is being typed. */
export function useDrawerOpen(): readonly [boolean, (open: boolean) => void] {
  const [open, setOpen] = useState(readKept('drawer') !== 'closed');
  const turn = useCallback((next: boolean) => {
    setOpen(next);
    writeKept('drawer', next ? 'open' : 'closed');
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const plain = !(event.ctrlKey || event.metaKey || event.altKey || event.shiftKey || event.defaultPrevented);
      if (!plain || event.key.toLowerCase() !== DRAWER_KEY || isBusy(event.target)) return;
      if (!isHeard(event, parseSingleKeys(readKept('single keys')), isOnDrawing(event.target))) return;
      event.preventDefault();
      turn(!open);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [open, turn]);
  return [open, turn];
}
