import './points.css';
import { pointToMillimetre } from '@loopwright/model';
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { TypedField } from '../typed/TypedField.tsx';
import { coordinateAnswer } from '../typed/typed-answer.ts';
import { type IndexRow, placeWords } from './index-rows.ts';

/** Rows drawn at once: a mapped site has features by the hundred. */
const PAGE = 25;

interface IndexListProps<Row extends IndexRow> {
  readonly title: string;
  readonly count: number;
  /** Made only while the list is open: a drag makes another one every picture. */
  readonly rows: () => readonly Row[];
  readonly edit: DoEdit;
  /** Goes to where all of it can be changed. */
  readonly open: (row: Row) => void;
}

/** One kind of things of the canvas, folded away; each row says its facts, types its place, and opens its sheet. */
export function IndexList<Row extends IndexRow>(props: IndexListProps<Row>) {
  const [isOpen, setOpen] = useState(false);
  return (
    <Fold title={props.title} count={String(props.count)} open={isOpen} onToggle={() => setOpen(!isOpen)}>
      <OpenList {...props} />
    </Fold>
  );
}

function OpenList<Row extends IndexRow>({ title, rows, edit, open }: IndexListProps<Row>) {
  const [wanted, setWanted] = useState('');
  const [most, setMost] = useState(PAGE);
  const all = useMemo(rows, [rows]);
  const found = all.filter((row) => `${row.title}\n${row.facts}`.toLocaleLowerCase('en').includes(wanted));
  const shown = found.slice(0, most);
  return (
    <>
      {all.length > PAGE && (
        <label className="field">
          <span className="field__label">Find in {title.toLocaleLowerCase('en')}</span>
          <input
            className="input"
            type="search"
            onChange={({ target }) => setWanted(target.value.trim().toLocaleLowerCase('en'))}
          />
        </label>
      )}
      {all.length === 0 && <p className="small soft">None.</p>}
      {all.length > 0 && found.length === 0 && <p className="small soft">None says that.</p>}
      <ul className="index">
        {shown.map((row) => (
          <li key={row.key} className="index__row">
            <button type="button" className="index__open" onClick={() => open(row)}>
              <span className="index__title">
                <bdi>{row.title}</bdi>
              </span>
              <span className="small soft">{row.facts}</span>
            </button>
            <RowPlace row={row} edit={edit} />
            {row.under?.map((part) => (
              <div key={part.key} className="index__under">
                <span className="small">{part.title}</span>
                <RowPlace row={part} of={`${row.title}, ${part.title}`} edit={edit} />
              </div>
            ))}
          </li>
        ))}
      </ul>
      {shown.length < found.length && (
        <Button className="button button--small button--quiet" onPress={() => setMost(most + 4 * PAGE)}>
          Show more ({found.length - shown.length})
        </Button>
      )}
    </>
  );
}

/** Where it lies: typed where it can be moved, read where it cannot. */
function RowPlace({
  row,
  of = row.title,
  edit,
}: {
  readonly row: IndexRow;
  readonly of?: string;
  readonly edit: DoEdit;
}) {
  const { at, moved } = row;
  if (!at) return null;
  if (!moved) return <span className="small soft">{placeWords(at)}</span>;
  const field = (axis: 'x' | 'y', way: 'east' | 'north') => (
    <TypedField
      label={`${of}, metres ${way}`}
      shown={at[axis].toFixed(1)}
      unit={`m ${way}`}
      answer={(typed) => coordinateAnswer(typed, at[axis], (to) => moved(pointToMillimetre({ ...at, [axis]: to })))}
      step={(by) => moved(pointToMillimetre({ ...at, [axis]: at[axis] + by }))}
      edit={edit}
    />
  );
  return (
    <span className="index__place">
      {field('x', 'east')}
      {field('y', 'north')}
    </span>
  );
}
