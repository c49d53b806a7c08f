import { bearingWords } from '../../reading/directions.ts';
import { lengthFigure, unitSymbol } from '../../reading/lengths.ts';
import { TypedField } from '../typed/TypedField.tsx';
import { bearingAnswer, lengthAnswer } from '../typed/typed-answer.ts';
import type { SectionProps } from './hole-sheet.ts';
import { type LegView, LONGEST_LEG, legOfBearing, legOfLength, SHORTEST_LEG, toLegs } from './legs-view.ts';

/** The legs of the line of play: a typed length or bearing moves the point the leg leads to. */
export function LegsTable(props: SectionProps) {
  const { hole, analysis, reading, number } = props;
  const legs = toLegs(hole, analysis.holes.get(hole.id));
  if (legs.length === 0)
    return <p className="small soft">It has no line of play yet: a tee or its green is missing.</p>;
  return (
    <table className="table hole-legs" aria-label={`Legs of ${number}`}>
      <thead>
        <tr>
          <th scope="col" className="table__words">
            leg
          </th>
          <th scope="col">length, {unitSymbol(reading.units)}</th>
          <th scope="col">bearing</th>
        </tr>
      </thead>
      <tbody>
        {legs.map((leg) => (
          <Leg key={leg.to} leg={leg} {...props} />
        ))}
      </tbody>
    </table>
  );
}

function Leg({ leg, routing, hole, reading, edit }: SectionProps & { readonly leg: LegView }) {
  const of = { routing: routing.id, hole: hole.id };
  const fixed = routing.locked || leg.pinned;
  const bounds = { least: SHORTEST_LEG, most: LONGEST_LEG };
  return (
    <tr>
      <th scope="row">{leg.words}</th>
      <td>
        <TypedField
          label={`Length of the leg from ${leg.words}`}
          shown={lengthFigure(leg.length, reading.units)}
          disabled={fixed}
          answer={(typed) =>
            lengthAnswer(typed, leg.length, reading.units, bounds, (length) => legOfLength(of, leg, length))
          }
          edit={edit}
        />
      </td>
      <td>
        <TypedField
          label={`Bearing of the leg from ${leg.words}, degrees from north`}
          shown={bearingWords(leg.bearing)}
          disabled={fixed}
          answer={(typed) => bearingAnswer(typed, leg.bearing, (bearing) => legOfBearing(of, leg, bearing))}
          edit={edit}
        />
      </td>
    </tr>
  );
}
