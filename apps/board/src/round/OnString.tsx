import type { HoleId } from '@loopwright/model';
import type { RoundProps } from '../board/parts.ts';
import { BaseBead } from './BaseBead.tsx';
import { Bead } from './Bead.tsx';
import { BeadMenu } from './BeadMenu.tsx';
import { spareChoices, splitChoices, swapChoices } from './bead-words.ts';
import { LoopMenu } from './LoopMenu.tsx';
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

/** One thing on the string: a base, a bead, a walk, the head of the tray. */
export function OnString({ item, round, routing }: OnStringProps) {
  switch (item.kind) {
    case 'tray':
      return <TrayHead empty={item.empty} />;
    case 'base':
      return <LoopHead item={item} round={round} routing={routing} />;
    case 'thread': {
      const selected = item.thread !== undefined && item.thread.key === round.selection.walk;
      return (
        <Thread thread={item.thread} selected={selected} onChoose={round.onChooseWalk} onKey={round.onThreadKey} />
      );
    }
    case 'bead':
      return <HoleBead item={item} round={round} routing={routing} />;
  }
}

interface LoopHeadProps extends OnStringProps {
  readonly item: Extract<StringItem, { readonly kind: 'base' }>;
}

function LoopHead({ item, round, routing }: LoopHeadProps) {
  const { beads, threads: _, ...loop } = item.loop;
  const splits = splitChoices(
    beads.map(({ hole }) => hole),
    round.names,
  );
  const next = loopAfter(routing, loop.loop)?.name ?? '';
  const menu = !routing.locked && (
    <LoopMenu loop={loop.loop} name={loop.name} splits={splits} next={next} onChoose={round.onLoopChoice} />
  );
  return <BaseBead {...loop} unit={round.unit} open={item.open} onToggle={round.onToggle} menu={menu} />;
}

interface HoleBeadProps extends OnStringProps {
  readonly item: Extract<StringItem, { readonly kind: 'bead' }>;
}

function HoleBead({ item, round, routing }: HoleBeadProps) {
  const { held, selection, chosen, names } = round;
  const { hole, number } = item.bead;
  const state = held?.holes.includes(hole) ? 'held' : chosen.includes(hole) ? 'selected' : 'resting';
  const next = nextInLoop(routing, hole);
  const menu = state === 'selected' && selection.hole === hole && !routing.locked && (
    <BeadMenu
      hole={hole}
      number={number}
      among={chosen.length}
      seat={item.loop === 'tray' ? 'tray' : 'loop'}
      swaps={swapChoices(routing, names, hole)}
      spares={spareChoices(routing, names)}
      {...(next === undefined ? {} : { next })}
      onAction={round.onAction}
    />
  );
  const foot = item.fromFoot === undefined ? {} : { fromFoot: item.fromFoot };
  return (
    <Bead
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

function nextInLoop({ loops }: RoundProps['routing'], hole: HoleId): HoleId | undefined {
  const loop = loops.find(({ holes }) => holes.includes(hole));
  return loop?.holes[loop.holes.indexOf(hole) + 1];
}
