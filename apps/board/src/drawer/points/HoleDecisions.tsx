import type { NamedEdit } from '@loopwright/document';
import type { Hole, ParChoice, RoutingId, Verdict } from '@loopwright/model';
import { useId } from 'react';
import { Button } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { PAR_CHOICES } from './hole-choices.ts';
import { VerdictSelect } from './VerdictSelect.tsx';

interface HoleDecisionsProps {
  readonly routing: RoutingId;
  readonly hole: Hole;
  readonly number: string;
  readonly locked: boolean;
  readonly edit: DoEdit;
}

/** What is decided about one hole besides its points: par, verdict, direction, in or out of the round. */
export function HoleDecisions({ routing, hole, number, locked, edit }: HoleDecisionsProps) {
  const of = { routing, hole: hole.id };
  const verdictId = useId();
  const judge = (verdict: Verdict) => edit({ ...of, edit: 'judge', verdict, reason: hole.verdictReason ?? '' });
  return (
    <div className="decisions">
      <Par sex="men" of={of} chosen={hole.par.men} number={number} locked={locked} edit={edit} />
      <Par sex="women" of={of} chosen={hole.par.women} number={number} locked={locked} edit={edit} />
      <div className="field">
        <label className="field__label" htmlFor={verdictId}>
          Verdict
        </label>
        <VerdictSelect
          id={verdictId}
          className="input"
          number={number}
          verdict={hole.verdict}
          disabled={locked}
          onVerdict={judge}
        />
      </div>
      <Button
        className="button button--small"
        isDisabled={locked}
        onPress={() => edit({ ...of, edit: 'reverse hole' })}
        aria-label={`Reverse hole ${number}`}
      >
        Reverse
      </Button>
    </div>
  );
}

interface ParProps {
  readonly sex: 'men' | 'women';
  readonly of: Pick<Extract<NamedEdit, { edit: 'set par' }>, 'routing' | 'hole'>;
  readonly chosen: ParChoice;
  readonly number: string;
  readonly locked: boolean;
  readonly edit: DoEdit;
}

function Par({ sex, of, chosen, number, locked, edit }: ParProps) {
  return (
    <label className="field">
      <span className="field__label">Par, {sex}</span>
      <select
        className="input"
        aria-label={`Par of hole ${number} for ${sex}`}
        value={String(chosen)}
        disabled={locked}
        onChange={(event) => {
          const choice = PAR_CHOICES.find((each) => String(each) === event.target.value);
          if (choice !== undefined) edit({ ...of, edit: 'set par', sex, par: choice });
        }}
      >
        {PAR_CHOICES.map((choice) => (
          <option key={choice} value={String(choice)}>
            {choice}
          </option>
        ))}
      </select>
    </label>
  );
}
