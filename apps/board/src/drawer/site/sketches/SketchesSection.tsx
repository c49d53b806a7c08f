import './sketches.css';
import type { SketchId } from '@loopwright/model';
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { useSteady } from '../../../reading/use-steady.ts';
import { Fold } from '../../../style/Fold.tsx';
import { SketchRowView } from './SketchRowView.tsx';
import { sketchRows } from './sketches-view.ts';

/** What was drawn beside the plan: measures, rods, rings and pencil lines, with what becomes of each. */
export function SketchesSection({ plan, routing, analysis, reading, selection, select, goTo, edit }: DrawerProps) {
  const [open, setOpen] = useState(true);
  const rows = useMemo(
    () => sketchRows(plan.site.sketches ?? [], { plan, routing, analysis }, reading.units),
    [plan, routing, analysis, reading.units],
  );
  const show = useSteady((id: SketchId) => {
    const at = rows.find((row) => row.id === id)?.at;
    select({ thing: { kind: 'sketch', id } });
    if (at) goTo({ kind: 'point', at });
  });
  const wipeable = rows.filter(({ kept }) => !kept);
  const chosen = selection.thing?.kind === 'sketch' ? selection.thing.id : undefined;
  return (
    <Fold title="Sketches" count={String(rows.length)} open={open} onToggle={() => setOpen(!open)}>
      {rows.length === 0 ? (
        <p className="empty">
          <strong>Nothing is sketched.</strong> Measure a line or an area, draw with the pencil, or put a clearance
          ring: everybody sees it, and it stays until it is wiped.
        </p>
      ) : (
        <>
          <ul className="sketches">
            {rows.map((row) => (
              <SketchRowView key={row.id} row={row} chosen={row.id === chosen} edit={edit} show={show} />
            ))}
          </ul>
          {wipeable.length > 0 && (
            <Button
              className="button button--small"
              onPress={() => edit({ edit: 'wipe sketches', sketches: wipeable.map(({ id }) => id) })}
            >
              Wipe all not kept ({wipeable.length})
            </Button>
          )}
        </>
      )}
    </Fold>
  );
}
