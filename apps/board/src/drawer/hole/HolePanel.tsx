import { holeOf } from '@loopwright/model';
import { useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { holesWords } from '../../reading/holes-words.ts';
import { namesOf } from '../../reading/names.ts';
import { Fold } from '../../style/Fold.tsx';
import { chosenHoles, holesInOrder } from '../../tools/chosen-holes.ts';
import { useArrival } from '../use-arrival.ts';
import { OneHole } from './OneHole.tsx';
import { SeveralHoles } from './SeveralHoles.tsx';
import { WhichHoles } from './WhichHoles.tsx';
import './hole.css';

/** The sheet of what is picked out: everything decided about one hole, or what several share. */
export function HolePanel(props: DrawerProps) {
  const { plan, routing, analysis, reading, selection, edit, take } = props;
  const [choosing, setChoosing] = useState(false);
  const names = namesOf(plan, routing, reading.units);
  const chosen = chosenHoles(routing, selection);
  const [only] = chosen;
  const hole = chosen.length === 1 && only !== undefined ? holeOf(routing, only) : undefined;
  if (holesInOrder(routing).length === 0) return <NoHoles {...props} />;
  return (
    <>
      <Heading {...props} words={chosen.length === 0 ? 'No hole chosen' : holesWords({ routing, names }, chosen)} />
      {chosen.length === 0 && (
        <p className="empty">
          Choose one on the drawing, in the round, or with the keys [ and ]. Shift adds another one; a frame drawn with
          Shift chooses all holes in it.
        </p>
      )}
      {routing.locked && chosen.length > 0 && (
        <p className="small soft">This routing is locked: everything can be read, nothing changed.</p>
      )}
      {hole && (
        <OneHole
          key={hole.id}
          {...{ plan, routing, analysis, reading, edit, take, hole }}
          number={names.number(hole.id)}
        />
      )}
      {chosen.length > 1 && <SeveralHoles {...props} />}
      <Fold title="Choose several" open={choosing || chosen.length > 1} onToggle={() => setChoosing(!choosing)}>
        <WhichHoles {...props} />
      </Fold>
    </>
  );
}

function NoHoles({ take, routing }: DrawerProps) {
  return (
    <div className="empty">
      <p>
        <strong>No holes yet on {routing.name}.</strong> Draw the first one from its tee, or from its green back.
      </p>
      <Button className="button button--main" isDisabled={routing.locked} onPress={() => take('draw hole')}>
        Draw a hole
      </Button>
    </div>
  );
}

/** What is picked out, with its menu. */
function Heading({ words, more, selection, goTo }: DrawerProps & { readonly words: string }) {
  const { hole } = selection;
  const heading = useRef<HTMLHeadingElement>(null);
  useArrival(heading, hole !== undefined);
  return (
    <div className="row hole-heading">
      <h2 ref={heading} tabIndex={-1} className="hole-heading__words">
        {words}
      </h2>
      {hole !== undefined && (
        <>
          <Button className="button button--small" onPress={() => goTo({ kind: 'hole', hole })}>
            Show
          </Button>
          <Button
            className="button button--small"
            aria-haspopup="menu"
            onPress={({ target }) => {
              const box = target.getBoundingClientRect();
              more({ x: box.left, y: box.bottom });
            }}
          >
            More …
          </Button>
        </>
      )}
    </div>
  );
}
