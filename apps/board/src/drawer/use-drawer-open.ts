import { useCallback, useEffect, useState } from 'react';
import { readKept, writeKept } from '../live/kept.ts';

const isBusy = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.closest('input, textarea, select, [role="dialog"], [role="menu"]') !== null);

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
      if (!plain || event.key.toLowerCase() !== 't' || isBusy(event.target)) return;
      event.preventDefault();
      turn(!open);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [open, turn]);
  return [open, turn];
}
