import type { Consequences, DoEdit, Reading, Selection } from '../board/parts.ts';
import { useWatched } from '../live/use-watched.ts';
import { AskingStrip } from './AskingStrip.tsx';
import { HoleMenu } from './HoleMenu.tsx';
import type { HoleHands } from './hole-hands.ts';
import { LengthenSheet } from './LengthenSheet.tsx';
import './hole-menu.css';

export interface HoleHandsViewProps extends Consequences {
  readonly reading: Reading;
  readonly selection: Selection;
  readonly hands: HoleHands;
  readonly edit: DoEdit;
}

/** What the hole menu shows: the menu itself, a question over the drawing, or a sheet. */
export function HoleHandsView(props: HoleHandsViewProps) {
  const { hands } = props;
  const open = useWatched(hands.menu);
  const asking = useWatched(hands.asking);
  return (
    <>
      {open && <HoleMenu key={`${open.at.x} ${open.at.y}`} {...props} open={open} />}
      {asking?.kind === 'length' ? (
        <LengthenSheet {...props} hole={asking.hole} onClose={() => hands.letGo()} />
      ) : (
        asking && <AskingStrip {...props} asking={asking} />
      )}
    </>
  );
}
