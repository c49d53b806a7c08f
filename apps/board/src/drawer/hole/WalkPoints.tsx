import type { NamedEdit } from '@loopwright/document';
import { pointBetween } from '@loopwright/geometry';
import { type HoleId, LIMITS, pointToMillimetre, type SitePoint } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { TypedField } from '../typed/TypedField.tsx';
import { coordinateAnswer, type TypedAnswer } from '../typed/typed-answer.ts';
import type { SectionProps } from './hole-sheet.ts';

/** The waypoints the walk to the next tee goes by. */
export function WalkPoints({ routing, analysis, hole, edit, take }: SectionProps & Pick<DrawerProps, 'take'>) {
  const { waypoints } = hole;
  const ledBy = (points: readonly SitePoint[]): NamedEdit => ({
    edit: 'set waypoints',
    routing: routing.id,
    hole: hole.id,
    waypoints: points,
  });
  const next = nextWaypoint(analysis.walks, hole.id);
  const isFull = waypoints.length >= LIMITS.waypointsPerHole;
  const moved = (index: number, axis: 'x' | 'y', typed: string): TypedAnswer => {
    const at = waypoints[index];
    if (!at) return { kind: 'same' };
    return coordinateAnswer(typed, at[axis], (to) => ledBy(waypoints.with(index, { ...at, [axis]: to })));
  };
  return (
    <>
      {waypoints.length === 0 ? (
        <p className="small soft">Straight from the green to the next tee.</p>
      ) : (
        <ol className="hole-walk">
          {waypoints.map((at, index) => (
            // By its number: the field being typed in keeps the keyboard when the waypoint moves.
            // biome-ignore lint/suspicious/noArrayIndexKey: waypoints have no names but their number
            <li key={index} className="hole-walk__point">
              <Coordinate
                axis="x"
                at={at}
                name={`waypoint ${index + 1}`}
                locked={routing.locked}
                edit={edit}
                moved={(typed) => moved(index, 'x', typed)}
              />
              <Coordinate
                axis="y"
                at={at}
                name={`waypoint ${index + 1}`}
                locked={routing.locked}
                edit={edit}
                moved={(typed) => moved(index, 'y', typed)}
              />
              <Button
                className="button button--small"
                isDisabled={routing.locked}
                aria-label={`Take waypoint ${index + 1} out`}
                onPress={() => edit(ledBy(waypoints.toSpliced(index, 1)))}
              >
                Take out
              </Button>
            </li>
          ))}
        </ol>
      )}
      <div className="row">
        <Button className="button button--small" isDisabled={routing.locked} onPress={() => take('waypoints')}>
          Lead it by waypoints
        </Button>
        {next && (
          <Button
            className="button button--small"
            isDisabled={routing.locked || isFull}
            onPress={() => edit(ledBy([...waypoints, next]))}
          >
            Add a waypoint
          </Button>
        )}
        {waypoints.length > 0 && (
          <Button className="button button--small" isDisabled={routing.locked} onPress={() => edit(ledBy([]))}>
            Straight again
          </Button>
        )}
      </div>
    </>
  );
}

/** Halfway between the last waypoint, or the green, and the next tee: typed on from there. */
function nextWaypoint(walks: SectionProps['analysis']['walks'], hole: HoleId): SitePoint | undefined {
  const [from, to] = walks.find((walk) => 'hole' in walk.from && walk.from.hole === hole)?.path.slice(-2) ?? [];
  return from && to && pointToMillimetre(pointBetween(from, to, 0.5));
}

interface CoordinateProps {
  readonly axis: 'x' | 'y';
  readonly at: SitePoint;
  readonly name: string;
  readonly locked: boolean;
  readonly edit: SectionProps['edit'];
  readonly moved: (typed: string) => TypedAnswer;
}

function Coordinate({ axis, at, name, locked, edit, moved }: CoordinateProps) {
  const way = axis === 'x' ? 'east' : 'north';
  return (
    <TypedField
      label={`${name}, metres ${way}`}
      shown={at[axis].toFixed(1)}
      unit={`m ${way}`}
      disabled={locked}
      answer={moved}
      edit={edit}
    />
  );
}
