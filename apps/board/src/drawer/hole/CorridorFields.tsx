import { Button } from 'react-aria-components';
import { lengthFigure, lengthWords, unitSymbol } from '../../reading/lengths.ts';
import { TypedField } from '../typed/TypedField.tsx';
import { corridorAnswer, toCorridorRows } from './corridor-view.ts';
import type { SectionProps } from './hole-sheet.ts';

/** The widths of the corridor: the hole's own, or the board's as they are. */
export function CorridorFields({ plan, routing, hole, reading, edit }: SectionProps) {
  const of = { routing: routing.id, hole };
  return (
    <>
      <div className="hole-figures hole-figures--two">
        {toCorridorRows(hole, plan).map((row) => (
          <TypedField
            key={row.place}
            label={row.words}
            caption={row.words}
            shown={lengthFigure(row.width, reading.units)}
            unit={unitSymbol(reading.units)}
            hint={row.own ? `its own; the board has ${lengthWords(row.usual, reading.units)}` : 'as the board has it'}
            disabled={routing.locked}
            answer={(typed) => corridorAnswer(of, row, typed, reading.units)}
            edit={edit}
          />
        ))}
      </div>
      {hole.corridor && (
        <Button
          className="button button--small"
          isDisabled={routing.locked}
          onPress={() => edit({ edit: 'set corridor', routing: routing.id, hole: hole.id, corridor: null })}
        >
          As the board has it
        </Button>
      )}
    </>
  );
}
