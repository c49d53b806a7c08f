import { LIMITS, type LoopId, type Routing } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { CommitField } from '../../style/CommitField.tsx';
import { takeName } from '../../style/name-rule.ts';
import { changeLoopsEdit, type RoundRow } from './rounds-view.ts';

interface RoundRowViewProps {
  readonly row: RoundRow;
  readonly routing: Routing;
  readonly edit: DoEdit;
}

/** One round: its name, its loops in order, each with a way to play it earlier or not at all. */
export function RoundRowView({ row, routing, edit }: RoundRowViewProps) {
  const of = { routing: routing.id, round: row.id };
  const loops = row.places.map(({ loop }) => loop);
  const play = (next: readonly LoopId[]) => {
    const round = routing.rounds.find(({ id }) => id === row.id);
    if (round) edit(changeLoopsEdit(routing, round, next));
  };
  const earlier = (place: number) => {
    const before = loops[place - 1];
    const loop = loops[place];
    if (before !== undefined && loop !== undefined) play(loops.with(place - 1, loop).with(place, before));
  };
  return (
    <li className="rounds__round">
      <CommitField
        label={`Name of the round ${row.name}`}
        value={row.name}
        maxLength={LIMITS.name}
        disabled={routing.locked}
        onCommit={(typed) => takeName(typed, (name) => edit({ ...of, edit: 'change round', to: { name } }))}
      />
      <span className="soft small">{row.holes}</span>
      <Button
        className="button button--small button--quiet"
        aria-label={`Remove the round ${row.name}`}
        isDisabled={routing.locked}
        onPress={() => edit({ ...of, edit: 'remove round' })}
      >
        Remove
      </Button>
      <ol className="rounds__loops" aria-label={`Loops of ${row.name}, in order`}>
        {row.places.map(({ key, name }, place) => (
          <li key={key} className="rounds__loop">
            <Button
              className="act"
              aria-label={`Play ${name} earlier`}
              isDisabled={routing.locked || place === 0}
              onPress={() => earlier(place)}
            >
              ◂
            </Button>
            <bdi className="rounds__name">{name}</bdi>
            <Button
              className="act"
              aria-label={`Leave ${name} out of ${row.name}`}
              isDisabled={routing.locked}
              onPress={() => play(loops.toSpliced(place, 1))}
            >
              ✕
            </Button>
          </li>
        ))}
        <li>
          <select
            className="input rounds__add"
            aria-label={`Add a loop to ${row.name}`}
            value=""
            disabled={routing.locked}
            onChange={(event) => event.target.value && play([...loops, event.target.value])}
          >
            <option value="">add a loop …</option>
            {routing.loops.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </li>
      </ol>
    </li>
  );
}
