import type { DrawerProps } from '../../board/parts.ts';
import { holeWords, namesOf } from '../../reading/names.ts';

/** The hole picked out. */
export function HolePanel({ plan, routing, reading, selection }: DrawerProps) {
  if (selection.hole === undefined) {
    return (
      <p className="empty">
        <strong>No hole chosen.</strong> Choose one on the drawing, in the round, or with the keys [ and ].
      </p>
    );
  }
  const names = namesOf(plan, routing, reading.units);
  return <h2>{holeWords(routing, names, selection.hole)}</h2>;
}
