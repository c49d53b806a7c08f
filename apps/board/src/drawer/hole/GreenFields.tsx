import type { NamedEdit } from '@loopwright/document';
import { type GreenShape, LIMITS } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { bearingWords } from '../../reading/directions.ts';
import { lengthFigure, unitSymbol } from '../../reading/lengths.ts';
import { LEAST_GREEN, oval, shapeOf, sized, turned } from '../../tools/green-shapes.ts';
import { TypedField } from '../typed/TypedField.tsx';
import { bearingAnswer, lengthAnswer } from '../typed/typed-answer.ts';
import type { SectionProps } from './hole-sheet.ts';

const SIZE = { least: LEAST_GREEN, most: LIMITS.greenSize };

/** Length, width, bearing and outline of the green. */
export function GreenFields({ routing, hole, reading, edit, take }: SectionProps & Pick<DrawerProps, 'take'>) {
  const { green } = hole;
  if (!green) return <p className="small soft">It has no green yet.</p>;
  const shape = shapeOf(green);
  const fixed = routing.locked || hole.pinned.includes('green');
  const edited = (next: GreenShape): NamedEdit => ({
    edit: 'shape green',
    routing: routing.id,
    hole: hole.id,
    shape: next,
  });
  const size = (side: 'length' | 'width') => (
    <TypedField
      label={`${side} of the green`}
      caption={side}
      shown={lengthFigure(green[side], reading.units)}
      unit={unitSymbol(reading.units)}
      disabled={fixed}
      answer={(typed) =>
        lengthAnswer(typed, green[side], reading.units, SIZE, (metres) => edited(sized(shape, { [side]: metres })))
      }
      edit={edit}
    />
  );
  return (
    <>
      <div className="hole-figures">
        {size('length')}
        {size('width')}
        <TypedField
          label="bearing of the green"
          caption="bearing"
          shown={bearingWords(green.bearing)}
          disabled={fixed}
          answer={(typed) => bearingAnswer(typed, green.bearing, (bearing) => edited(turned(shape, bearing)))}
          edit={edit}
        />
      </div>
      <div className="row">
        <Button className="button button--small" isDisabled={fixed} onPress={() => take('green outline')}>
          Draw its outline
        </Button>
        {green.outline && (
          <Button className="button button--small" isDisabled={fixed} onPress={() => edit(edited(oval(shape)))}>
            Oval again
          </Button>
        )}
        <span className="small soft">
          {green.outline ? `an outline of its own, ${green.outline.length} points` : 'an oval'}
        </span>
      </div>
    </>
  );
}
