import { LIMITS, type TeeSet } from '@loopwright/model';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { DoEdit } from '../../../board/parts.ts';
import { CommitField } from '../../../style/CommitField.tsx';
import { takeName } from '../../../style/name-rule.ts';
import { SureSheet } from '../../../style/SureSheet.tsx';
import { moveTeeSetEdit, PLAYERS } from './tee-set-moves.ts';

interface TeeSetRowProps {
  readonly teeSet: TeeSet;
  readonly teeSets: readonly TeeSet[];
  /** How many of its tees were placed by hand. */
  readonly placed: number;
  readonly edit: DoEdit;
}

/** One tee set: its name and player, further back or forward, or off the board. */
export function TeeSetRow({ teeSet, teeSets, placed, edit }: TeeSetRowProps) {
  const [asking, setAsking] = useState(false);
  const { id, name, player } = teeSet;
  const remove = () => edit({ edit: 'remove tee set', teeSet: id });
  const last = teeSets.length === 1;
  return (
    <li className="tee-sets__set">
      <CommitField
        label={`Name of the tee set ${name}`}
        value={name}
        maxLength={LIMITS.name}
        onCommit={(typed) =>
          takeName(typed, (next) => edit({ edit: 'change tee set', teeSet: id, to: { name: next } }))
        }
      />
      <select
        className="input"
        aria-label={`Player of ${name}`}
        value={player}
        onChange={(event) => {
          const chosen = PLAYERS.find((each) => each === event.target.value);
          if (chosen) edit({ edit: 'change tee set', teeSet: id, to: { player: chosen } });
        }}
      >
        {PLAYERS.map((each) => (
          <option key={each}>{each}</option>
        ))}
      </select>
      <span className="soft small">{placed === 1 ? '1 tee placed' : `${placed} tees placed`}</span>
      <span className="tee-sets__acts">
        <Move words={`Move ${name} further back`} mark="▴" step={moveTeeSetEdit(teeSets, id, -1)} edit={edit} />
        <Move words={`Move ${name} further forward`} mark="▾" step={moveTeeSetEdit(teeSets, id, 1)} edit={edit} />
        <Button
          className="act"
          aria-label={last ? `${name} is the last set and stays` : `Remove the tee set ${name}`}
          isDisabled={last}
          onPress={() => (placed > 0 ? setAsking(true) : remove())}
        >
          ✕
        </Button>
      </span>
      {asking && (
        <SureSheet
          title={`Remove the tee set ${name}?`}
          words={`${placed === 1 ? 'One placed tee goes' : `${placed} placed tees go`} off the plan with it, on every routing. Undo brings them back.`}
          does="Remove it"
          onSure={remove}
          onClose={() => setAsking(false)}
        />
      )}
    </li>
  );
}

interface MoveProps {
  readonly words: string;
  readonly mark: string;
  readonly step: ReturnType<typeof moveTeeSetEdit>;
  readonly edit: DoEdit;
}

function Move({ words, mark, step, edit }: MoveProps) {
  return (
    <Button className="act" aria-label={words} isDisabled={!step} onPress={() => step && edit(step)}>
      {mark}
    </Button>
  );
}
