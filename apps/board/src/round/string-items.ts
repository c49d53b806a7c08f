import type { HoleId, LoopId } from '@loopwright/model';
import type { BeadView, LoopView, RoundView } from './round-view.ts';
import type { ThreadView } from './thread-view.ts';

/** What hangs on the string, top to bottom: one flat list, so that a bead keeps its place on the page's tree as it moves. */
export type StringItem =
  | { readonly kind: 'base'; readonly key: string; readonly loop: LoopView; readonly open: boolean }
  | {
      readonly kind: 'bead';
      readonly key: string;
      readonly bead: BeadView;
      readonly loop: LoopId | 'tray';
      /** In the tray: how many lie below it. */
      readonly fromFoot?: number;
    }
  | { readonly kind: 'thread'; readonly key: string; readonly thread: ThreadView | undefined }
  | { readonly kind: 'tray'; readonly key: 'tray'; readonly empty: boolean };

/** The string as a list with stable keys. Closed loops show their base alone. */
export function stringItems(view: RoundView, closed: ReadonlySet<LoopId>): readonly StringItem[] {
  return [
    ...view.loops.flatMap((loop) => loopItems(loop, !closed.has(loop.loop))),
    { kind: 'tray', key: 'tray', empty: view.spare.length === 0 },
    ...view.spare.map(
      (bead, place): StringItem => ({
        kind: 'bead',
        key: bead.hole,
        bead,
        loop: 'tray',
        fromFoot: view.spare.length - 1 - place,
      }),
    ),
  ];
}

function loopItems(loop: LoopView, open: boolean): readonly StringItem[] {
  const base: StringItem = { kind: 'base', key: `base ${loop.loop}`, loop, open };
  if (!open) return [base];
  const first: StringItem = { kind: 'thread', key: `to ${loop.loop}`, thread: loop.threads.get('first') };
  const beads = loop.beads.flatMap((bead): readonly StringItem[] => [
    { kind: 'bead', key: bead.hole, bead, loop: loop.loop },
    { kind: 'thread', key: `from ${bead.hole}`, thread: loop.threads.get(bead.hole) },
  ]);
  return [base, first, ...beads];
}

/** The order of everything on the string in one word: it changes when, and only when, something changes place. */
export function orderOf(items: readonly StringItem[]): string {
  return items.map(({ key }) => key).join('/');
}

/** The bead that Tab reaches: the wanted one where it is on the string, else the first; none on an empty string. */
export function reachable(items: readonly StringItem[], wanted: HoleId | undefined): HoleId | undefined {
  const beads = items.flatMap((item) => (item.kind === 'bead' ? [item.bead.hole] : []));
  return beads.find((hole) => hole === wanted) ?? beads[0];
}
