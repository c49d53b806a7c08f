import type { Base, BaseId, Loop, Routing } from '@loopwright/model';
import { useState } from 'react';
import { NameSheet } from '../style/NameSheet.tsx';
import { SureSheet } from '../style/SureSheet.tsx';
import { type LoopAction, nextLoopName } from './loop-actions.ts';

export type LoopQuestion = 'change' | 'add' | 'remove';

interface LoopQuestionsProps {
  readonly question: LoopQuestion;
  readonly loop: Loop;
  readonly routing: Routing;
  readonly bases: readonly Base[];
  readonly onAction: (action: LoopAction) => void;
  readonly onClose: () => void;
}

/** What is asked about a loop before it is changed, removed or given a neighbour. */
export function LoopQuestions({ question, loop, routing, bases, onAction, onClose }: LoopQuestionsProps) {
  const [base, setBase] = useState<BaseId | null>(loop.base ?? null);
  if (question === 'remove') {
    const holes = loop.holes.length;
    return (
      <SureSheet
        title={`Remove the loop ${loop.name}?`}
        words={
          holes === 0
            ? 'It has no holes. Rounds lose it.'
            : `${holes === 1 ? 'Its hole goes' : `Its ${holes} holes go`} to the spare tray, and rounds lose it. Undo brings it back.`
        }
        does="Remove it"
        onSure={() => onAction({ do: 'remove' })}
        onClose={onClose}
      />
    );
  }
  const adds = question === 'add';
  return (
    <NameSheet
      title={adds ? 'A new loop' : `The loop ${loop.name}`}
      label="Its name"
      name={adds ? nextLoopName(routing) : loop.name}
      does={adds ? 'Add it' : 'Keep it'}
      onName={(name) => onAction({ do: question, name, base })}
      onClose={onClose}
    >
      <label className="field">
        <span className="field__label">Base it leaves from and returns to</span>
        <select className="input" value={base ?? ''} onChange={(event) => setBase(event.target.value || null)}>
          <option value="">none</option>
          {bases.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {adds && <p className="small soft">No round plays it yet: put it into one under ‘Rounds of loops’.</p>}
    </NameSheet>
  );
}
