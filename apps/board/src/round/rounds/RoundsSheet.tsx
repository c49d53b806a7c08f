import type { Routing } from '@loopwright/model';
import { Button, Heading } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { LOCKED_WORDS } from '../../head/routings/routing-words.ts';
import { freshId } from '../../reading/fresh-id.ts';
import { Sheet } from '../../style/Sheet.tsx';
import './rounds.css';
import { RoundRowView } from './RoundRowView.tsx';
import { addRoundEdit, toRoundRows, twoByTwoEdit } from './rounds-view.ts';

interface RoundsSheetProps {
  readonly routing: Routing;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** Which loops are played as one, and in which order: 'A + B', 'B + C'. Card and balance are told for each round. */
export function RoundsSheet({ routing, edit, onClose }: RoundsSheetProps) {
  const rows = toRoundRows(routing);
  const twoByTwo = twoByTwoEdit(routing, freshId);
  const add = () =>
    edit(
      addRoundEdit(
        routing,
        routing.loops.slice(0, 2).map(({ id }) => id),
        freshId('r'),
      ),
    );
  return (
    <Sheet onClose={onClose}>
      <div className="sheet">
        <Heading slot="title">Rounds of loops</Heading>
        <p className="small soft">
          {routing.locked
            ? LOCKED_WORDS
            : 'A round is the loops that are played as one, in order. Holes are numbered by the first round that plays them.'}
        </p>
        {rows.length === 0 && <p className="empty">No round yet: each loop is counted by itself.</p>}
        <ol className="rounds">
          {rows.map((row) => (
            <RoundRowView key={row.id} row={row} routing={routing} edit={edit} />
          ))}
        </ol>
        <div className="row">
          <Button className="button" onPress={add} isDisabled={routing.locked || routing.loops.length === 0}>
            Add a round
          </Button>
          {twoByTwo && !routing.locked && (
            <Button className="button" onPress={() => edit(twoByTwo)}>
              Play three loops two by two
            </Button>
          )}
          <Button className="button button--main" onPress={onClose}>
            Close
          </Button>
        </div>
      </div>
    </Sheet>
  );
}
