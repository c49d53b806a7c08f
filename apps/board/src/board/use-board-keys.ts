import { useEffect, useRef, useState } from 'react';
import { readKept } from '../live/kept.ts';
import { isEverywhere, type KeyMeaning, meaningOf } from '../tools/keys.ts';
import { isHeard, parseSingleKeys } from '../tools/single-keys.ts';
import { actOnKey, type KeyHand } from './key-actions.ts';
import { openNudges } from './nudges.ts';

/** Listens to the keyboard for as long as the board is shown. Answers whether 'see before' is held. */
export function useBoardKeys(hand: KeyHand): boolean {
  const newest = useRef(hand);
  newest.current = hand;
  const [beforeHeld, setBeforeHeld] = useState(false);
  useEffect(() => {
    const nudges = openNudges(() => newest.current);
    const down = (event: KeyboardEvent) => {
      const heard = isHeard(event, parseSingleKeys(readKept('single keys')), isOnPlan(event.target));
      if (event.defaultPrevented || !heard) return;
      const { instruments } = newest.current;
      if (isOnDrawing(event.target) && instruments?.down(event)) {
        // A typed value is typed into its field, which has the keyboard by now.
        if (isOnDrawing(document.activeElement)) event.preventDefault();
        return;
      }
      const meaning = meaningOf(event);
      if (!meaning || isTyping(event.target) || !isMeant(meaning, event.target)) return;
      event.preventDefault();
      if (meaning.do === 'before') setBeforeHeld(true);
      else if (meaning.do === 'nudge') nudges.nudge(meaning.x, meaning.y);
      else if (meaning.do !== 'let go' || !nudges.letGo()) actOnKey(meaning, newest.current);
    };
    const up = (event: KeyboardEvent) => {
      newest.current.instruments?.up(event.key);
      if (event.key.toLowerCase() === 'b') setBeforeHeld(false);
      if (event.key.startsWith('Arrow')) nudges.drop();
    };
    // Keys let go while another window had the keyboard are never reported.
    const away = () => {
      setBeforeHeld(false);
      nudges.drop();
    };
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    window.addEventListener('blur', away);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
      window.removeEventListener('blur', away);
    };
  }, []);
  return beforeHeld;
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.matches('input, textarea, select') || target.isContentEditable);

/** Keys of the drawing work on the drawing, and when nothing has the keyboard; lists and menus keep their own arrows. */
function isMeant(meaning: KeyMeaning, target: EventTarget | null): boolean {
  if (target instanceof HTMLElement && target.closest('[role="dialog"], [role="menu"], [role="listbox"]')) return false;
  return isEverywhere(meaning) || target === document.body || isOnPlan(target);
}

const isOnPlan = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('.plan') !== null;

/** Keys of instruments are the drawing's own: a button beside it keeps its Space and Enter. */
const isOnDrawing = (target: EventTarget | null): boolean =>
  target === document.body || (target instanceof HTMLElement && target.closest('.plan__surface') !== null);
