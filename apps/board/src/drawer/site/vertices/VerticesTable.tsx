import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { Fold } from '../../../style/Fold.tsx';
import { VertexRow } from './VertexRow.tsx';
import { isVertex, PAGE, pageOf, type VerticesProps } from './vertex-view.ts';

interface VerticesTableProps extends VerticesProps {
  /** e.g. 'Outline', 'Cut out 1'. */
  readonly title: string;
}

/** The vertices of one outline or line as a table: the keyboard's equal of the grips on the drawing. */
export function VerticesTable({ title, ...props }: VerticesTableProps) {
  const { shown, selection } = props;
  const { points, outline } = shown;
  const [open, setOpen] = useState(false);
  const [page, setPage] = useState(0);
  const chosen = points.findIndex((at) => isVertex(selection.vertex, outline, at));
  useEffect(() => {
    if (chosen < 0) return;
    setOpen(true);
    setPage(pageOf(chosen));
  }, [chosen]);
  const last = Math.max(0, Math.ceil(points.length / PAGE) - 1);
  const first = Math.min(page, last) * PAGE;
  return (
    <Fold title={title} count={`${points.length} vertices`} open={open} onToggle={() => setOpen(!open)}>
      <table className="table vertices" aria-label={`Vertices: ${title}`}>
        <thead>
          <tr>
            <th scope="col">vertex</th>
            <th scope="col">east, m</th>
            <th scope="col">north, m</th>
            <th scope="col">
              <span className="only-heard">add or take out</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {points.slice(first, first + PAGE).map((at, index) => (
            // By its place, not by where it lies: the field being typed in keeps the keyboard when the vertex moves.
            // biome-ignore lint/suspicious/noArrayIndexKey: vertices have no names but their number
            <VertexRow key={first + index} at={at} index={first + index} {...props} />
          ))}
        </tbody>
      </table>
      {last > 0 && (
        <div className="row small">
          <Button className="button button--small" isDisabled={first === 0} onPress={() => setPage(page - 1)}>
            Before
          </Button>
          <span>
            {first + 1} to {Math.min(first + PAGE, points.length)} of {points.length}
          </span>
          <Button
            className="button button--small"
            isDisabled={first + PAGE >= points.length}
            onPress={() => setPage(page + 1)}
          >
            After
          </Button>
        </div>
      )}
    </Fold>
  );
}
