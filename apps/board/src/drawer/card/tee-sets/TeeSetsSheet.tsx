import type { Plan } from '@loopwright/model';
import { Button, Heading } from 'react-aria-components';
import type { DoEdit } from '../../../board/parts.ts';
import { freshId } from '../../../reading/fresh-id.ts';
import { Sheet } from '../../../style/Sheet.tsx';
import { TeeSetRow } from './TeeSetRow.tsx';
import { addTeeSetEdit, canAddTeeSet, placedTees } from './tee-set-moves.ts';

interface TeeSetsSheetProps {
  readonly plan: Plan;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** The tee sets of the board, from the back, each with the player it is made for. */
export function TeeSetsSheet({ plan, edit, onClose }: TeeSetsSheetProps) {
  const { teeSets, routings } = plan;
  const add = () => {
    const step = addTeeSetEdit(teeSets, freshId('t'));
    if (step) edit(step);
  };
  return (
    <Sheet onClose={onClose}>
      <div className="sheet">
        <Heading slot="title">Tee sets</Heading>
        <p className="small soft">
          From the back: the first is the longest. The player decides how far a drive goes, where it lands and which
          club is left; distances are under Limits. A set whose tee is not placed on a hole has one proposed there.
        </p>
        <ol className="tee-sets">
          {teeSets.map((teeSet) => (
            <TeeSetRow
              key={teeSet.id}
              teeSet={teeSet}
              teeSets={teeSets}
              placed={placedTees(routings, teeSet.id)}
              edit={edit}
            />
          ))}
        </ol>
        {!canAddTeeSet(teeSets) && <p className="small soft">Six sets are as many as a board takes.</p>}
        <div className="row">
          <Button className="button" onPress={add} isDisabled={!canAddTeeSet(teeSets)}>
            Add a tee set
          </Button>
          <Button className="button button--main" onPress={onClose}>
            Close
          </Button>
        </div>
      </div>
    </Sheet>
  );
}
