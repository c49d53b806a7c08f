import { type Boundary, LIMITS } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { toField, unitSymbol } from '../../../reading/lengths.ts';
import { TypedField } from '../../typed/TypedField.tsx';
import { lengthAnswer } from '../../typed/typed-answer.ts';
import { VerticesOf } from '../vertices/VerticesOf.tsx';
import { sizeWords } from './boundary-view.ts';

const WITHIN = { least: 0, most: LIMITS.boundaryTolerance };

/** The edge of the site: its size, how far the line may be off, its vertices. */
export function BoundarySection(props: DrawerProps) {
  const { plan, reading, edit, take, select } = props;
  const { boundary } = plan.site;
  if (!boundary) {
    return (
      <>
        <p className="empty">
          <strong>No boundary yet.</strong> Draw it corner by corner, or type its coordinates: then holes near the edge
          are noticed.
        </p>
        <Button className="button button--small" onPress={() => take('boundary')}>
          Draw the boundary
        </Button>
      </>
    );
  }
  return (
    <>
      <p>{sizeWords(boundary, reading.units)}</p>
      <TypedField
        label="The line may be off by"
        caption="The line may be off by"
        shown={String(toField(boundary.tolerance, reading.units))}
        unit={unitSymbol(reading.units)}
        hint="0 for a surveyed line; it is taken off before anything is noticed."
        answer={(typed) =>
          lengthAnswer(typed, boundary.tolerance, reading.units, WITHIN, (tolerance) => ({
            edit: 'draw boundary',
            boundary: { ...boundary, tolerance },
          }))
        }
        edit={edit}
      />
      <div className="row">
        <Button className="button button--small" onPress={() => select({ thing: { kind: 'boundary' } })}>
          Choose it
        </Button>
        <Button className="button button--small" onPress={() => take('boundary')}>
          Draw it anew, or a further piece
        </Button>
        <Button className="button button--small" onPress={() => edit({ edit: 'draw boundary', boundary: null })}>
          Remove
        </Button>
      </div>
      <VerticesOf {...props} thing={{ kind: 'boundary' }} />
      {boundary.inner.length > 0 && <InnerList boundary={boundary} edit={edit} />}
    </>
  );
}

/** 'Someone else's land inside' can be given up again, one outline at a time. */
function InnerList({ boundary, edit }: { readonly boundary: Boundary; readonly edit: DrawerProps['edit'] }) {
  return (
    <div className="row">
      {boundary.inner.map((ring, index) => (
        <Button
          key={`${ring[0]?.x} ${ring[0]?.y} ${ring.length}`}
          className="button button--small"
          onPress={() =>
            edit({ edit: 'draw boundary', boundary: { ...boundary, inner: boundary.inner.toSpliced(index, 1) } })
          }
        >
          Remove land inside {index + 1}
        </Button>
      ))}
    </div>
  );
}
