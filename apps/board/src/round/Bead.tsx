import type { HoleId, LoopId } from '@loopwright/model';
import { type KeyboardEvent, type MouseEvent, memo, type PointerEvent, type ReactNode } from 'react';
import { inkOf } from '../board/people-inks.ts';
import { saysTheSame } from '../reading/steady.ts';
import { SeverityMark } from '../style/SeverityMark.tsx';
import type { BeadView } from './round-view.ts';
import { VERDICT_MARKS } from './verdict-marks.ts';

export interface BeadHandlers {
  readonly onPress: (event: PointerEvent, hole: HoleId) => void;
  readonly onChoose: (event: MouseEvent, hole: HoleId) => void;
  readonly onKey: (event: KeyboardEvent, hole: HoleId) => void;
}

interface BeadProps extends BeadHandlers {
  readonly bead: BeadView;
  /** Where it hangs: its loop, or the spare tray. */
  readonly loop: LoopId | 'tray';
  readonly state: 'resting' | 'selected' | 'held';
  /** The one bead of the string that Tab reaches; arrows go on from it. */
  readonly reachable: 'by tab' | 'by arrows';
  /** Its place from the foot of the tray, 0 for the last: the tray stays in sight while the string is scrolled. */
  readonly fromFoot?: number;
  /** The menu of the selected hole. */
  readonly menu?: ReactNode;
}

/** One hole on the string: number, par, length, direction, verdict, worst finding. */
export const Bead = memo(function Bead({ bead, loop, state, reachable, fromFoot, menu, ...handlers }: BeadProps) {
  const ring = bead.heldBy && { '--ink-of-person': inkOf(bead.heldBy.ink).colour };
  const foot = fromFoot === undefined ? undefined : { '--from-foot': String(fromFoot) };
  return (
    <li
      className={`bead bead--${state}${bead.heldBy ? ' bead--others' : ''}`}
      data-hole={bead.hole}
      data-loop={loop}
      data-slot={loop === 'tray' ? undefined : 'bead'}
      style={{ ...ring, ...foot }}
    >
      <button
        type="button"
        className="bead__button"
        tabIndex={reachable === 'by tab' ? 0 : -1}
        aria-label={bead.said}
        aria-current={state !== 'resting'}
        aria-describedby="round-keys"
        title={bead.name || undefined}
        onPointerDown={(event) => handlers.onPress(event, bead.hole)}
        onClick={(event) => handlers.onChoose(event, bead.hole)}
        onKeyDown={(event) => handlers.onKey(event, bead.hole)}
      >
        <span className="bead__disc">{bead.disc}</span>
        <span className="bead__par">{loop === 'tray' && bead.name ? bead.name : `par ${bead.par}`}</span>
        <span className="bead__length">
          {bead.length}
          {bead.change && <span className="bead__change">{bead.change}</span>}
        </span>
        <Direction degrees={bead.arrow} />
        <span className={`bead__verdict bead__verdict--${bead.verdict}`} title={bead.verdict}>
          {VERDICT_MARKS[bead.verdict]}
        </span>
        <span className="bead__finding">{bead.worst && <SeverityMark severity={bead.worst} words="" />}</span>
      </button>
      <span className="bead__menu">{menu}</span>
    </li>
  );
}, saysTheSame);

/** Which way the hole plays, north up. */
function Direction({ degrees }: { readonly degrees: number | undefined }) {
  if (degrees === undefined) return <span />;
  return (
    <svg className="bead__arrow" viewBox="-8 -8 16 16" aria-hidden="true">
      <path d="M0 6.5V-6M-3.5 -2.2 0 -6.3 3.5 -2.2" transform={`rotate(${degrees})`} />
    </svg>
  );
}
