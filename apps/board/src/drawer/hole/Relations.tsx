import type { RelationKind } from '@loopwright/model';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { otherHoles } from '../../hole-menu/hole-questions.ts';
import { holeWords, namesOf } from '../../reading/names.ts';
import type { SectionProps } from './hole-sheet.ts';

const KINDS: readonly RelationKind[] = ['shares its green with', 'crosses on purpose', 'shares fairway with'];

/** What the designer means between this hole and others: shown as meant, and not counted against it. */
export function Relations({ plan, routing, hole, reading, edit, number }: SectionProps) {
  const [kind, setKind] = useState<RelationKind>('shares its green with');
  const [other, setOther] = useState('');
  const names = namesOf(plan, routing, reading.units);
  const of = { routing: routing.id, hole: hole.id };
  const choices = otherHoles({ routing, names, hole: hole.id });
  return (
    <>
      {hole.relations.length > 0 && (
        <ul className="hole-relations">
          {hole.relations.map((relation) => (
            <li key={`${relation.kind} ${relation.hole}`} className="row">
              {relation.kind} {holeWords(routing, names, relation.hole)}
              <Button
                className="button button--small"
                isDisabled={routing.locked}
                aria-label={`No longer ${relation.kind} ${holeWords(routing, names, relation.hole)}`}
                onPress={() => edit({ ...of, edit: 'unrelate', relation })}
              >
                Take back
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <select
          className="input hole-relations__kind"
          aria-label={`What hole ${number} does`}
          value={kind}
          disabled={routing.locked}
          onChange={(event) => setKind(KINDS.find((each) => each === event.target.value) ?? kind)}
        >
          {KINDS.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
        <select
          className="input hole-relations__hole"
          aria-label="with which hole"
          value={other}
          disabled={routing.locked}
          onChange={(event) => setOther(event.target.value)}
        >
          <option value="">which hole?</option>
          {choices.map((choice) => (
            <option key={choice.hole} value={choice.hole}>
              {choice.words}
            </option>
          ))}
        </select>
        <Button
          className="button button--small"
          isDisabled={routing.locked || !choices.some((choice) => choice.hole === other)}
          onPress={() => {
            edit({ ...of, edit: 'relate', relation: { kind, hole: other } });
            setOther('');
          }}
        >
          State it
        </Button>
      </div>
    </>
  );
}
