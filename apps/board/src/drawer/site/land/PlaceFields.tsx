import type { NamedEdit } from '@loopwright/document';
import type { SitePoint } from '@loopwright/model';
import type { DoEdit } from '../../../board/parts.ts';
import { TypedField } from '../../typed/TypedField.tsx';
import { coordinateAnswer } from '../../typed/typed-answer.ts';

interface PlaceFieldsProps {
  /** Whose place it is, e.g. 'Apron'. */
  readonly of: string;
  readonly at: SitePoint;
  readonly editFor: (at: SitePoint) => NamedEdit;
  readonly edit: DoEdit;
}

/** One place in metres east and north: typed, or moved a metre by the arrow keys. */
export function PlaceFields({ of, at, editFor, edit }: PlaceFieldsProps) {
  const field = (axis: 'x' | 'y', way: 'east' | 'north') => (
    <TypedField
      label={`${of}, metres ${way}`}
      caption={`${of}, metres ${way}`}
      shown={at[axis].toFixed(1)}
      answer={(typed) => coordinateAnswer(typed, at[axis], (to) => editFor({ ...at, [axis]: to }))}
      step={(by) => editFor({ ...at, [axis]: at[axis] + by })}
      edit={edit}
    />
  );
  return (
    <div className="site-figures">
      {field('x', 'east')}
      {field('y', 'north')}
    </div>
  );
}
