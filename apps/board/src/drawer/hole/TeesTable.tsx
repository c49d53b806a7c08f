import { Button } from 'react-aria-components';
import { lengthenedTo } from '../../hole-menu/lengthened.ts';
import { lengthFigure, unitSymbol } from '../../reading/lengths.ts';
import { TypedField } from '../typed/TypedField.tsx';
import type { SectionProps } from './hole-sheet.ts';
import { type TeeRow, toTeeRows } from './tees-view.ts';

/** Every tee set's tee: placed by hand or proposed; a typed length slides a placed one along its line. */
export function TeesTable(props: SectionProps) {
  const { hole, plan, analysis, reading, number } = props;
  const rows = toTeeRows(hole, analysis.holes.get(hole.id), plan);
  return (
    <table className="table hole-tees" aria-label={`Tees of ${number}`}>
      <thead>
        <tr>
          <th scope="col" className="table__words">
            tee
          </th>
          <th scope="col">length, {unitSymbol(reading.units)}</th>
          <th scope="col" className="table__words">
            where
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Tee key={row.teeSet} row={row} {...props} />
        ))}
      </tbody>
    </table>
  );
}

function Tee({ row, routing, hole, reading, edit }: SectionProps & { readonly row: TeeRow }) {
  const of = { routing: routing.id, hole: hole.id };
  const { end, at, length } = row;
  const fixed = routing.locked || row.pinned;
  const shown = length === undefined ? '' : lengthFigure(length, reading.units);
  return (
    <tr className={row.state === 'proposed' ? 'proposed' : undefined}>
      <th scope="row">{row.name}</th>
      <td>
        {end ? (
          <TypedField
            label={`Length from the ${row.name} tee`}
            shown={shown}
            disabled={fixed}
            answer={(typed) => lengthenedTo(of, end, typed, reading.units)}
            edit={edit}
          />
        ) : (
          shown
        )}
      </td>
      <td>
        {row.state === 'missing' && 'not placed'}
        {row.state === 'proposed' && at && (
          <>
            proposed{' '}
            <Button
              className="button button--small"
              isDisabled={routing.locked}
              aria-label={`Place the ${row.name} tee here`}
              onPress={() => edit({ ...of, edit: 'move part', part: `tee:${row.teeSet}`, to: at })}
            >
              Place it here
            </Button>
          </>
        )}
        {row.state === 'placed' && (
          <>
            placed{row.pinned && ', pinned'}{' '}
            <Button
              className="button button--small"
              isDisabled={fixed}
              aria-label={`Propose the ${row.name} tee again`}
              onPress={() => edit({ ...of, edit: 'propose tee', teeSet: row.teeSet })}
            >
              Propose again
            </Button>
          </>
        )}
      </td>
    </tr>
  );
}
