import type { SitePoint } from '@loopwright/model';
import { Button } from 'react-aria-components';
import { refusedOutline } from '../../../tools/land/refused-outline.ts';
import { TypedField } from '../../typed/TypedField.tsx';
import { addAfter, isVertex, type VerticesProps, vertexAnswer } from './vertex-view.ts';

interface VertexRowProps extends VerticesProps {
  readonly at: SitePoint;
  readonly index: number;
}

/** One vertex: where it lies, changed by typing or by arrow keys; one more behind it, or this one out. */
export function VertexRow(props: VertexRowProps) {
  const { site, shown, at, index, selection, select, goTo, edit, say } = props;
  const { outline } = shown;
  const isChosen = isVertex(selection.vertex, outline, at);
  const choose = () => {
    select({ ...(selection.thing ? { thing: selection.thing } : {}), vertex: { outline, at } });
    goTo({ kind: 'point', at });
  };
  const added = addAfter(shown, index);
  const doOrSay = (change: NonNullable<typeof added> | ReturnType<typeof removeAt>) => {
    const why = refusedOutline(site, change);
    if (why === undefined) edit(change);
    else say(why);
  };
  const removeAt = () => ({ edit: 'remove vertex', outline, at }) as const;
  const coordinate = (axis: 'x' | 'y') => (
    <TypedField
      label={`Vertex ${index + 1}, metres ${axis === 'x' ? 'east' : 'north'}`}
      shown={at[axis].toFixed(1)}
      answer={(typed) => vertexAnswer(site, shown, at, axis, typed)}
      step={(by) => ({ edit: 'move vertex', outline, from: at, to: { ...at, [axis]: at[axis] + by } })}
      edit={edit}
    />
  );
  return (
    <tr className={isChosen ? 'vertices__chosen' : undefined}>
      <th scope="row">
        <Button className="button button--small button--quiet" aria-label={`Show vertex ${index + 1}`} onPress={choose}>
          {index + 1}
        </Button>
      </th>
      <td>{coordinate('x')}</td>
      <td>{coordinate('y')}</td>
      <td className="vertices__does">
        <Button
          className="button button--small"
          aria-label={`Add a vertex after ${index + 1}`}
          isDisabled={!added}
          onPress={() => added && doOrSay(added)}
        >
          +
        </Button>
        <Button
          className="button button--small"
          aria-label={`Take vertex ${index + 1} out`}
          onPress={() => doOrSay(removeAt())}
        >
          −
        </Button>
      </td>
    </tr>
  );
}
