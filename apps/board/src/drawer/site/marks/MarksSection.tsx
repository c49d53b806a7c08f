import { openMarkUses } from '@loopwright/analysis';
import { LIMITS } from '@loopwright/model';
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { useSteady } from '../../../reading/use-steady.ts';
import { ThingRow } from '../land/ThingRow.tsx';
import { MarkFields } from './MarkFields.tsx';
import { type MarkFilter, markRows } from './marks-view.ts';

/** The sites found on the land, and which hole of which routing has taken each up. */
export function MarksSection(props: DrawerProps) {
  const { plan, reading, selection, select, goTo, take } = props;
  const usesOf = useMemo(openMarkUses, []);
  const [filter, setFilter] = useState<MarkFilter>('all');
  const { marks } = plan.site;
  const uses = useMemo(() => usesOf(plan), [usesOf, plan]);
  const rows = useMemo(() => markRows(plan, uses, filter, reading.units), [plan, uses, filter, reading.units]);
  const chosen = selection.thing?.kind === 'mark' ? selection.thing.id : undefined;
  const choose = useSteady((id: string) => {
    const mark = marks.find((one) => one.id === id);
    if (!mark || chosen === id) return select({});
    select({ thing: { kind: 'mark', id } });
    return goTo({ kind: 'point', at: mark.at });
  });
  const unused = marks.filter(({ id }) => (uses.get(id) ?? []).length === 0).length;
  return (
    <>
      {marks.length === 0 ? (
        <p className="empty">
          <strong>No site mark yet.</strong> Walk the land first: mark green sites, tee sites and landing ground as you
          find them, with a verdict. A hole drawn near one takes it up.
        </p>
      ) : (
        <FilterField plan={plan} filter={filter} unused={unused} onFilter={setFilter} />
      )}
      {marks.length > 0 && rows.length === 0 && <p className="small soft">{NONE_SHOWN[filterKind(filter)]}</p>}
      <ul className="things">
        {rows.map((row) => (
          <ThingRow
            key={row.id}
            id={row.id}
            title={row.title}
            what={row.what}
            chosen={row.id === chosen}
            onChoose={choose}
          >
            <MarkFields {...props} row={row} />
          </ThingRow>
        ))}
      </ul>
      <Button
        className="button button--small"
        isDisabled={marks.length >= LIMITS.siteMarks}
        onPress={() => take('site mark')}
      >
        Mark a site
      </Button>
    </>
  );
}

const filterKind = (filter: MarkFilter) => (filter === 'all' || filter === 'unused' ? filter : 'routing');

const NONE_SHOWN = {
  all: '',
  unused: 'Every site that was marked is used by a hole.',
  routing: 'No hole of this routing lies on a site that was marked.',
} as const;

interface FilterFieldProps extends Pick<DrawerProps, 'plan'> {
  readonly filter: MarkFilter;
  readonly unused: number;
  readonly onFilter: (filter: MarkFilter) => void;
}

function FilterField({ plan, filter, unused, onFilter }: FilterFieldProps) {
  const choices: readonly { readonly key: MarkFilter; readonly words: string }[] = [
    { key: 'all', words: `all (${plan.site.marks.length})` },
    { key: 'unused', words: `no hole uses yet (${unused})` },
    ...plan.routings.map(({ id, name }) => ({ key: `routing ${id}` as const, words: `used by ${name}` })),
  ];
  return (
    <label className="field">
      <span className="field__label">Show</span>
      <select
        className="input"
        value={filter}
        onChange={({ target }) => {
          const chosen = choices.find(({ key }) => key === target.value);
          if (chosen) onFilter(chosen.key);
        }}
      >
        {choices.map(({ key, words }) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
