import type { HoleId, Routing } from '@loopwright/model';
import { type KeyboardEvent, type RefObject, useLayoutEffect } from 'react';
import type { Names } from '../reading/names.ts';
import { BEAD_KEYS, HELD_BEAD_KEYS, WALK_KEYS } from './bead-keys.ts';
import { placeBeside } from './bead-moves.ts';
import { droppedWords, grabbedWords, leftWords, movedWords } from './bead-words.ts';
import type { BeadHand } from './use-bead-hand.ts';

interface BeadKeys {
  readonly string: RefObject<HTMLElement | null>;
  readonly hand: BeadHand;
  /** What holes are called while one is held: by their numbers as they were at picking up. */
  readonly namesIn: (routing: Routing) => Names;
  readonly announce: (words: string) => void;
  /** The keyboard came to a bead: alone, or with those picked out before. */
  readonly onReach: (hole: HoleId, how: 'alone' | 'further') => void;
  readonly onTakeOut: (hole: HoleId) => void;
  /** The loops that are on the string, in its order: beads are not carried where nobody sees them. */
  readonly asShown: (routing: Routing) => Routing;
}

/** Enter or Space picks beads up, arrows move them, Enter or Space puts them down, Escape leaves them; Delete takes out. */
export function useBeadKeys(keys: BeadKeys) {
  const { hand, namesIn, announce } = keys;
  const heldByKeys = hand.held?.by === 'keys' ? hand.held : undefined;
  useLayoutEffect(() => {
    if (heldByKeys) beadButton(keys.string.current, heldByKeys.hole)?.focus();
  }, [heldByKeys, keys.string]);

  const pickUp = (hole: HoleId) => {
    const held = hand.pick(hole, 'keys');
    announce(
      held ? grabbedWords(held.holes, namesIn(held.routing)) : 'This routing is locked: copy it to change the order.',
    );
  };
  const putDown = () => {
    const held = hand.drop();
    if (held) announce(droppedWords(held, namesIn(held.routing)));
  };
  const move = (step: 1 | -1) => {
    const held = hand.held;
    if (!held) return;
    const place = placeBeside(keys.asShown(held.routing), held.holes, held.place, step);
    hand.moveTo(place);
    announce(movedWords({ holes: held.holes, place }, namesIn(held.routing)));
  };
  const leave = () => {
    const held = hand.leave();
    if (held) announce(leftWords(held.holes, namesIn(held.routing)));
  };

  const whileHeld = (event: KeyboardEvent) => {
    const meaning = HELD_BEAD_KEYS[event.key];
    if (meaning === 'after') move(1);
    else if (meaning === 'before') move(-1);
    else if (meaning === 'put down') putDown();
    else if (meaning === 'leave') return leave();
    else return;
    event.preventDefault();
  };
  const whileResting = (event: KeyboardEvent, hole: HoleId) => {
    const how = event.shiftKey ? 'further' : 'alone';
    const meaning = BEAD_KEYS[event.key];
    if (meaning === 'pick up') pickUp(hole);
    else if (meaning === 'after') focusBeside(keys, hole, 1, how);
    else if (meaning === 'before') focusBeside(keys, hole, -1, how);
    else if (meaning === 'walk') threadUnder(keys.string.current, hole)?.focus();
    else if (meaning === 'take out') keys.onTakeOut(hole);
    else return;
    event.preventDefault();
  };
  const onKey = (event: KeyboardEvent, hole: HoleId) => (hand.held ? whileHeld(event) : whileResting(event, hole));
  return { onKey, onThreadKey: (event: KeyboardEvent) => onThreadKey(event, keys.string.current) };
}

/** From walk to walk with up and down; left and Escape go back to the bead it leaves, or the first one. */
function onThreadKey(event: KeyboardEvent, string: HTMLElement | null): void {
  const here = event.currentTarget;
  if (!(here instanceof HTMLElement)) return;
  const threads = [...(string?.querySelectorAll<HTMLElement>('.thread__button') ?? [])];
  const place = threads.indexOf(here);
  const meaning = WALK_KEYS[event.key];
  if (meaning === 'after') threads[place + 1]?.focus();
  else if (meaning === 'before') threads[place - 1]?.focus();
  else if (meaning === 'hole') beadAbove(here)?.focus();
  else return;
  event.preventDefault();
}

function beadAbove(thread: Element): HTMLElement | null {
  const item = thread.closest('li');
  const beside = item?.previousElementSibling?.matches('.bead')
    ? item.previousElementSibling
    : item?.nextElementSibling;
  return beside?.querySelector<HTMLElement>('.bead__button') ?? null;
}

function beadButton(string: HTMLElement | null, hole: HoleId) {
  return string?.querySelector<HTMLElement>(`[data-hole="${CSS.escape(hole)}"] .bead__button`);
}

/** The walk that leaves this hole. */
function threadUnder(string: HTMLElement | null, hole: HoleId) {
  return beadButton(string, hole)?.closest('li')?.nextElementSibling?.querySelector<HTMLElement>('.thread__button');
}

function focusBeside({ string, onReach }: BeadKeys, hole: HoleId, step: 1 | -1, how: 'alone' | 'further') {
  const beads = [...(string.current?.querySelectorAll<HTMLElement>('[data-hole]') ?? [])];
  const next = beads[beads.findIndex((bead) => bead.dataset.hole === hole) + step]?.dataset.hole;
  if (next === undefined) return;
  onReach(next, how);
  beadButton(string.current, next)?.focus();
}
