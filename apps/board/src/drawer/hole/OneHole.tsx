import { type ReactNode, useState } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { PointsTable } from '../points/PointsTable.tsx';
import { toPointRows } from '../points/points-view.ts';
import { CorridorFields } from './CorridorFields.tsx';
import { GreenFields } from './GreenFields.tsx';
import { HoleWords } from './HoleWords.tsx';
import type { SectionProps } from './hole-sheet.ts';
import { LegsTable } from './LegsTable.tsx';
import { PlaceInRound } from './PlaceInRound.tsx';
import { Relations } from './Relations.tsx';
import { TeesTable } from './TeesTable.tsx';
import { WalkPoints } from './WalkPoints.tsx';

type OneHoleProps = SectionProps & Pick<DrawerProps, 'take'>;

/** Everything decided about one hole, readable and changeable in place. */
export function OneHole(props: OneHoleProps) {
  const { hole, plan, routing, analysis, number, edit, take } = props;
  const { take: _, ...section } = { ...props, take };
  const count = (things: number) => (things === 0 ? {} : { count: String(things) });
  return (
    <>
      <HoleWords {...section} />
      <PlaceInRound {...section} />
      <Section title="Tees" starts="open">
        <TeesTable {...section} />
      </Section>
      <Section title="Legs" starts="open">
        <LegsTable {...section} />
      </Section>
      <Section title="Green" starts="open">
        <GreenFields {...section} take={take} />
      </Section>
      <Section title="Points and pins" starts="closed" {...count(hole.pinned.length)}>
        <PointsTable
          routing={routing.id}
          hole={hole.id}
          title={`hole ${number}`}
          points={toPointRows(hole, analysis.holes.get(hole.id), plan, number)}
          locked={routing.locked}
          edit={edit}
        />
      </Section>
      <Section title="Walk to the next tee" starts="closed" {...count(hole.waypoints.length)}>
        <WalkPoints {...section} take={take} />
      </Section>
      <Section title="Corridor" starts="closed" {...count(Object.keys(hole.corridor ?? {}).length)}>
        <CorridorFields {...section} />
      </Section>
      <Section title="Relations" starts="closed" {...count(hole.relations.length)}>
        <Relations {...section} />
      </Section>
    </>
  );
}

interface HoleSectionProps {
  readonly title: string;
  readonly starts: 'open' | 'closed';
  readonly count?: string;
  readonly children: ReactNode;
}

/** A part of the sheet; it stays open or closed while other holes are looked at. */
function Section({ title, starts, count, children }: HoleSectionProps) {
  const [open, setOpen] = useState(starts === 'open');
  return (
    <Fold title={title} {...(count ? { count } : {})} open={open} onToggle={() => setOpen(!open)}>
      <div className="hole-section">{children}</div>
    </Fold>
  );
}
