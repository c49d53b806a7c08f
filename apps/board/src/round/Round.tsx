import type { RoundProps } from '../board/parts.ts';
import { BadgeLines } from '../drawing/BadgeLines.tsx';
import { BaseBead } from './BaseBead.tsx';
import { Bead } from './Bead.tsx';
import { BeadMenu } from './BeadMenu.tsx';
import { GRABBED_HINT, swapChoices } from './bead-words.ts';
import type { StringItem } from './string-items.ts';
import { Thread } from './Thread.tsx';
import { TrayHead } from './TrayHead.tsx';
import { useRound } from './use-round.ts';

/** The round as a string of beads in playing order, the walks on the thread between them, the spare tray below. */
export function Round(props: RoundProps) {
  const round = useRound(props);
  const { items, held } = round;
  const heldBead = items.find((item) => item.kind === 'bead' && item.bead.hole === held?.hole);
  return (
    <nav className={`round${held ? ' round--holding' : ''}`} aria-labelledby="round-title">
      <h2 id="round-title" className="round__title">
        The round <span className="round__unit">{round.unit}</span>
      </h2>
      <p id="round-keys" className="only-heard">
        Enter picks the hole up to move it in the round. {GRABBED_HINT} Delete takes it out to the spare tray.
      </p>
      <div className="round__string" ref={round.string} {...round.onString}>
        <ol className="round__beads" style={{ '--spare-holes': String(round.spare) }}>
          {items.map((item) => (
            <OnString key={item.key} item={item} round={round} routing={props.routing} />
          ))}
        </ol>
      </div>
      <div className="round__ghost" ref={round.ghost} aria-hidden="true" hidden={held?.by !== 'pointer'}>
        {heldBead?.kind === 'bead' && heldBead.bead.number}
        {held?.swapWith !== undefined && ` ⇄ ${round.names.number(held.swapWith)}`}
        {round.worst.length > 0 && (
          <ul className="badge round__worst">
            <BadgeLines lines={round.worst} />
          </ul>
        )}
      </div>
      <p className="only-heard" aria-live="assertive">
        {round.announced}
      </p>
    </nav>
  );
}

interface OnStringProps {
  readonly item: StringItem;
  readonly round: ReturnType<typeof useRound>;
  readonly routing: RoundProps['routing'];
}

function OnString({ item, round, routing }: OnStringProps) {
  const { held, selection } = round;
  if (item.kind === 'tray') return <TrayHead empty={item.empty} />;
  if (item.kind === 'base') {
    const { loop, name, par, base } = item.loop;
    return <BaseBead loop={loop} name={name} par={par} base={base} open={item.open} onToggle={round.onToggle} />;
  }
  if (item.kind === 'thread') {
    const selected = item.thread !== undefined && item.thread.key === selection.walk;
    return <Thread thread={item.thread} selected={selected} onChoose={round.onChooseWalk} />;
  }
  const { hole, number } = item.bead;
  const state = held?.hole === hole ? 'held' : selection.hole === hole ? 'selected' : 'resting';
  const menu = state === 'selected' && !routing.locked && (
    <BeadMenu
      hole={hole}
      number={number}
      seat={item.loop === 'tray' ? 'tray' : 'loop'}
      swaps={swapChoices(routing, round.names, hole)}
      onAction={round.onAction}
    />
  );
  const reachable = hole === round.current ? 'by tab' : 'by arrows';
  const foot = item.fromFoot === undefined ? {} : { fromFoot: item.fromFoot };
  return (
    <Bead
      bead={item.bead}
      loop={item.loop}
      state={state}
      reachable={reachable}
      menu={menu}
      {...foot}
      {...round.beads}
    />
  );
}
