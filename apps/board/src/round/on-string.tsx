import type { ReactElement } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { BaseBead } from './BaseBead.tsx';
import { Bead } from './Bead.tsx';
import { BeadMore } from './BeadMore.tsx';
import { splitChoices } from './bead-words.ts';
import { loopAfter } from './loop-actions.ts';
import type { StringItem } from './string-items.ts';
import { Thread } from './Thread.tsx';
import { TrayHead } from './TrayHead.tsx';
import type { useRound } from './use-round.ts';

interface OnStringProps {
  readonly item: StringItem;
  readonly round: ReturnType<typeof useRound>;
  readonly routing: RoundProps['routing'];
}

/**
 * One thing on the string: a base, a bead, a walk, the head of the tray. Made by call and not as components of their
 * own: there are some seventy, and in a drag nearly all of them stay as they are.
 */
export function onString({ item, round, routing }: OnStringProps): ReactElement {
  switch (item.kind) {
    case 'tray':
      return <TrayHead key={item.key} empty={item.empty} />;
    case 'base':
      return loopHead({ item, round, routing });
    case 'thread': {
      const selected = item.thread !== undefined && item.thread.key === round.selection.walk;
      const hands = { onChoose: round.onChooseWalk, onKey: round.onThreadKey };
      return <Thread key={item.key} thread={item.thread} selected={selected} {...hands} />;
    }
    case 'bead':
      return holeBead({ item, round, routing });
  }
}

interface LoopHeadProps extends OnStringProps {
  readonly item: Extract<StringItem, { readonly kind: 'base' }>;
}

function loopHead({ item, round, routing }: LoopHeadProps): ReactElement {
  const { beads, threads: _, holes, length, walks, ...loop } = item.loop;
  const splits = splitChoices(
    beads.map(({ hole }) => hole),
    round.names,
  );
  const next = loopAfter(routing, loop.loop)?.name ?? '';
  // Told where the loop is folded; else they would draw its head anew in each picture of a drag.
  const totals = item.open ? undefined : `${holes}, ${length} ${round.unit}; walks ${walks}`;
  return (
    <BaseBead
      key={item.key}
      {...loop}
      open={item.open}
      onToggle={round.onToggle}
      {...(totals === undefined ? {} : { totals })}
      {...(routing.locked ? {} : { splits, next, onChoose: round.onLoopChoice })}
    />
  );
}

interface HoleBeadProps extends OnStringProps {
  readonly item: Extract<StringItem, { readonly kind: 'bead' }>;
}

function holeBead({ item, round, routing }: HoleBeadProps): ReactElement {
  const { held, selection, chosen } = round;
  const { hole, number } = item.bead;
  const state = held?.holes.includes(hole) ? 'held' : chosen.includes(hole) ? 'selected' : 'resting';
  const menu = state === 'selected' && selection.hole === hole && !routing.locked && (
    <BeadMore words={chosen.length > 1 ? `${chosen.length} holes` : `hole ${number}`} onMore={round.onMore} />
  );
  const foot = item.fromFoot === undefined ? {} : { fromFoot: item.fromFoot };
  return (
    <Bead
      key={item.key}
      bead={item.bead}
      loop={item.loop}
      state={state}
      reachable={hole === round.current ? 'by tab' : 'by arrows'}
      menu={menu}
      {...foot}
      {...round.beads}
    />
  );
}
