import type { HoleId, Routing } from '@loopwright/model';
import { type KeyboardEvent, type RefObject, useLayoutEffect } from 'react';
import type { Names } from '../reading/names.ts';
import { placeBeside } from './bead-moves.ts';
import { droppedWords, grabbedWords, leftWords, movedWords } from './bead-words.ts';
import type { BeadHand } from './use-bead-hand.ts';

interface BeadKeys {
  readonly string: RefObject<HTMLElement | null>;
  readonly hand: BeadHand;
  /** What holes are called while one is held: by their numbers as they were at picking up. */
  readonly namesIn: (routing: Routing) => Names;
  readonly announce: (words: string) => void;
  readonly onReach: (hole: HoleId) => void;
  readonly onTakeOut: (hole: HoleId) => void;
}

/** Enter or Space picks a bead up, arrows move it, Enter or Space puts it down, Escape leaves it; Delete takes it out. */
export function useBeadKeys(keys: BeadKeys) {
  const { hand, namesIn, announce } = keys;
  const heldByKeys = hand.held?.by === 'keys' ? hand.held : undefined;
  useLayoutEffect(() => {
    if (heldByKeys) beadButton(keys.string.current, heldByKeys.hole)?.focus();
  }, [heldByKeys, keys.string]);

  const pickUp = (hole: HoleId) => {
    const held = hand.pick(hole, 'keys');
    announce(
      held ? grabbedWords(namesIn(held.routing).number(hole)) : 'This routing is locked: copy it to change the order.',
    );
  };
  const putDown = () => {
    const held = hand.drop();
    if (held) announce(droppedWords(held, namesIn(held.routing)));
  };
  const move = (step: 1 | -1) => {
    const held = hand.held;
    if (!held) return;
    const place = placeBeside(held.routing, held.hole, held.place, step);
    hand.moveTo(place);
    announce(movedWords({ hole: held.hole, place }, namesIn(held.routing)));
  };
  const leave = () => {
    const held = hand.leave();
    if (held) announce(leftWords(namesIn(held.routing).number(held.hole)));
  };

  const whileHeld = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown') move(1);
    else if (event.key === 'ArrowUp') move(-1);
    else if (event.key === 'Enter' || event.key === ' ') putDown();
    else if (event.key === 'Escape' || event.key === 'Tab') return leave();
    else return;
    event.preventDefault();
  };
  const whileResting = (event: KeyboardEvent, hole: HoleId) => {
    if (event.key === 'Enter' || event.key === ' ') pickUp(hole);
    else if (event.key === 'ArrowDown') focusBeside(keys, hole, 1);
    else if (event.key === 'ArrowUp') focusBeside(keys, hole, -1);
    else if (event.key === 'Delete') keys.onTakeOut(hole);
    else return;
    event.preventDefault();
  };
  const onKey = (event: KeyboardEvent, hole: HoleId) => (hand.held ? whileHeld(event) : whileResting(event, hole));
  return { onKey, pickUp };
}

function beadButton(string: HTMLElement | null, hole: HoleId) {
  return string?.querySelector<HTMLElement>(`[data-hole="${CSS.escape(hole)}"] .bead__button`);
}

function focusBeside({ string, onReach }: BeadKeys, hole: HoleId, step: 1 | -1) {
  const beads = [...(string.current?.querySelectorAll<HTMLElement>('[data-hole]') ?? [])];
  const next = beads[beads.findIndex((bead) => bead.dataset.hole === hole) + step]?.dataset.hole;
  if (next === undefined) return;
  onReach(next);
  beadButton(string.current, next)?.focus();
}
