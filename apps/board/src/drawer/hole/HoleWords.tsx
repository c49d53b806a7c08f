import { LIMITS } from '@loopwright/model';
import { HoleDecisions } from '../points/HoleDecisions.tsx';
import type { SectionProps } from './hole-sheet.ts';
import { TextLine } from './TextLine.tsx';

/** Name, par, verdict with its reason, and note of a hole. */
export function HoleWords({ routing, analysis, hole, number, edit }: SectionProps) {
  const of = { routing: routing.id, hole: hole.id };
  const { locked } = routing;
  const figures = analysis.holes.get(hole.id);
  return (
    <>
      <TextLine
        label="Name"
        text={hole.name ?? ''}
        most={LIMITS.name}
        lines="one"
        disabled={locked}
        onText={(name) => edit({ ...of, edit: 'name hole', name })}
      />
      <HoleDecisions routing={routing.id} hole={hole} number={number} locked={locked} edit={edit} />
      {figures && !figures.missing && (
        <p className="small soft">
          By its length: par {parWords(figures.parsByLength.men)} for men, {parWords(figures.parsByLength.women)} for
          women.
        </p>
      )}
      <TextLine
        label="Reason for the verdict"
        text={hole.verdictReason ?? ''}
        most={LIMITS.note}
        lines="several"
        disabled={locked}
        onText={(reason) => edit({ ...of, edit: 'judge', verdict: hole.verdict, reason })}
      />
      <TextLine
        label="Note"
        text={hole.note ?? ''}
        most={LIMITS.note}
        lines="several"
        disabled={locked}
        onText={(note) => edit({ ...of, edit: 'note hole', note })}
      />
    </>
  );
}

const parWords = (pars: readonly number[]) => pars.join(' or ');
