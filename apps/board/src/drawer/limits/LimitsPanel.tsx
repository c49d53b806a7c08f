import { SAFETY_CAUTION } from '@loopwright/analysis/wording';
import { useMemo, useState } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { LimitRow } from './LimitRow.tsx';
import { toLimitGroups } from './limits-view.ts';

/** The limits of the board, changed for everybody on it. */
export function LimitsPanel({ plan, reading, edit }: DrawerProps) {
  const groups = useMemo(() => toLimitGroups(plan.settings, reading.units), [plan.settings, reading.units]);
  const [open, setOpen] = useState('walk');
  return (
    <>
      <p className="small soft">Limits belong to the board: a change counts for everybody and can be undone.</p>
      {groups.map(({ key, title, limits, changed }) => (
        <Fold
          key={key}
          title={title}
          count={changed === 0 ? `${limits.length}` : `${limits.length}, ${changed} changed`}
          open={open === key}
          onToggle={() => setOpen(open === key ? '' : key)}
        >
          {limits.some(({ safety }) => safety) && <p className="caution">{SAFETY_CAUTION}</p>}
          <ul>
            {limits.map((limit) => (
              <LimitRow key={limit.key} limit={limit} units={reading.units} edit={edit} />
            ))}
          </ul>
        </Fold>
      ))}
    </>
  );
}
