import type { NamedEdit } from '@loopwright/document';
import type { Hole, Routing, Site } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import type { Hand, PointerAt } from './tool.ts';

/** A straight hole of 300 m going north, its green pinned, alone on its routing. */
export const hole: Hole = {
  id: 'h1',
  seat: { in: 'loop', loop: 'l1', key: 'a' },
  tees: { back: { x: 0, y: 0 } },
  turnPoints: [],
  green: { centre: { x: 0, y: 300 }, length: 30, width: 20, bearing: 0 },
  par: { men: 'by length', women: 'by length' },
  verdict: 'undecided',
  pinned: ['green'],
  waypoints: [],
  relations: [],
};
export const routing: Routing = { id: 'r1', name: 'A', locked: false, loops: [], rounds: [], holes: [hole], spare: [] };

/** Bare land. */
export const site: Site = { name: 'Ferrow', north: 0, bases: [], marks: [], features: [], images: [] };

/** The pointer at a place, one metre a pixel, with keys held. */
export const at = (x: number, y: number, keys: Pick<PointerAt, 'shift' | 'adds' | 'alt'> = {}): PointerAt => ({
  canvas: { x, y: -y },
  site: { x, y },
  kind: 'mouse',
  ...keys,
});

/** A hand that keeps what it was told to do. */
export function openHand(over: Partial<Routing> = {}, selection: Selection = {}, land: Partial<Site> = {}) {
  const did: unknown[] = [];
  const hand: Hand = {
    routing: { ...routing, ...over },
    site: { ...site, ...land },
    selection,
    snap: (at) => at,
    freshId: (letter) => `${letter}9`,
    drag: (edit: NamedEdit) => did.push(edit),
    drop: () => did.push('drop'),
    letGo: () => did.push('let go'),
    edit: (edit) => did.push({ wrote: edit }),
    frame: (corners) => did.push({ frame: corners }),
    holesIn: () => ['h1', 'h2'],
    say: (words) => did.push({ said: words }),
    select: (selection) => did.push(selection),
    pan: (by) => did.push({ pan: by }),
    askAboutPin: (_hole, parts, further = []) =>
      did.push(further.length > 0 ? { pinned: parts, further } : { pinned: parts }),
    sayLocked: () => did.push('locked'),
  };
  return { hand, did };
}
