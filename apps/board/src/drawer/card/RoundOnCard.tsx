import type { RoundFigures } from '@loopwright/analysis';
import { useMemo } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { unitSymbol } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { RosePanel } from '../rose/Rose.tsx';
import { ApproachClubs } from './bars/ApproachClubs.tsx';
import { toClubHoles } from './bars/approach-clubs.ts';
import { LengthBars } from './bars/LengthBars.tsx';
import { toParBars } from './bars/length-bars.ts';
import { RhythmStrip } from './bars/RhythmStrip.tsx';
import { toStrip } from './bars/rhythm-strip.ts';
import type { CardView } from './card-view.ts';
import { LineTable } from './LineTable.tsx';
import { toLineView } from './line-view.ts';
import { OnFoot } from './OnFoot.tsx';
import { Ratings } from './Ratings.tsx';
import { toRatingRows } from './ratings-view.ts';
import './bars/bars.css';

interface RoundOnCardProps extends Pick<DrawerProps, 'plan' | 'routing' | 'analysis' | 'reading'> {
  readonly card: CardView;
  /** Absent where the routing has none. */
  readonly round: RoundFigures | undefined;
}

/** One round beside itself: as it is played, its lengths by par, its clubs, its directions, its provisional rating. */
export function RoundOnCard({ card, round, plan, routing, analysis, reading }: RoundOnCardProps) {
  const bars = useMemo(() => {
    if (!round) return undefined;
    const names = namesOf(plan, routing, reading.units);
    return {
      strip: toStrip({ plan, routing, analysis }, round, reading, names),
      pars: toParBars(analysis, round, reading, names),
      clubs: toClubHoles(analysis, round, reading, names),
    };
  }, [plan, routing, analysis, reading, round]);
  const lines = useMemo(() => toLineView(plan, routing, analysis, reading), [plan, routing, analysis, reading]);
  const walked = card.rounds.find(({ total }) => total.key === round?.round);
  const unit = unitSymbol(reading.units);
  return (
    <>
      {walked && <OnFoot round={walked} unit={unit} />}
      {bars && bars.strip.length > 0 && <RhythmStrip holes={bars.strip} unit={unit} />}
      {bars && bars.pars.length > 0 && <LengthBars pars={bars.pars} unit={unit} />}
      {bars && bars.clubs.length > 0 && <ApproachClubs clubs={bars.clubs} player={lines.player} />}
      <LineTable view={lines} unit={unit} />
      {round && <RosePanel round={round} units={reading.units} />}
      {round && <Ratings rows={toRatingRows(round, plan)} />}
    </>
  );
}
