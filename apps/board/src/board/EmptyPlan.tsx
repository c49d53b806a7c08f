import { Button } from 'react-aria-components';
import type { Frame } from '../live/frame.ts';
import './empty-plan.css';

interface EmptyPlanProps {
  readonly frame: Frame;
  readonly onDraw: () => void;
  readonly onKeys: () => void;
}

/** What to do next on a board without holes; it goes with the first one. */
export function EmptyPlan({ frame: { plan, routing }, onDraw, onKeys }: EmptyPlanProps) {
  if (routing.holes.some(({ seat }) => seat.in !== 'removed')) return null;
  const hasImage = plan.site.images.length > 0;
  return (
    <section className="empty-plan" aria-label="What to do first">
      <h2>{hasImage ? 'The land is there. Draw the first hole.' : 'Bare land'}</h2>
      <ol>
        {!hasImage && <li>Drop a plan or an aerial of the site on this page: PNG, JPEG or WebP.</li>}
        {!hasImage && <li>Give it its scale and north; boundary, water and roads are drawn from the sheet Site.</li>}
        <li>
          Draw a hole: its tee, its turns, its green.
          <Button className="button button--main" onPress={onDraw}>
            Draw hole <kbd>D</kbd>
          </Button>
        </li>
      </ol>
      <p className="soft small">
        Everything works by keys too.
        <Button className="button button--small button--quiet" onPress={onKeys}>
          Show the keys <kbd>?</kbd>
        </Button>
      </p>
    </section>
  );
}
