import { Button } from 'react-aria-components';
import { unscaled } from '../images/unscaled.ts';
import type { InstrumentName } from '../instruments/instrument-name.ts';
import type { Frame } from '../live/frame.ts';
import './empty-plan.css';

interface EmptyPlanProps {
  readonly frame: Frame;
  readonly take: (name: InstrumentName) => void;
  readonly onKeys: () => void;
}

/** What to do next on a board without holes; each step goes when it is done, all with the first hole. */
export function EmptyPlan({ frame: { plan, routing }, take, onKeys }: EmptyPlanProps) {
  if (routing.holes.some(({ seat }) => seat.in !== 'removed')) return null;
  const { images, boundary } = plan.site;
  const isUnscaled = unscaled(images).length > 0;
  return (
    <section className="empty-plan" aria-label="What to do first">
      <h2>{titleOf(images.length > 0, isUnscaled)}</h2>
      <ol>
        {images.length === 0 && <li>Drop a plan or an aerial of the site on this page: PNG, JPEG or WebP.</li>}
        {isUnscaled && <li>Give the picture its scale, by two points a known distance apart; then north.</li>}
        {!boundary && (
          <li>
            Draw the boundary; then water, roads and what else lies on the land.
            <StepButton onPress={() => take('boundary')}>Boundary</StepButton>
          </li>
        )}
        <li>
          Draw a hole: its tee, its turns, its green.
          <Button className="button button--main button--small" onPress={() => take('draw hole')}>
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

function titleOf(hasImage: boolean, isUnscaled: boolean): string {
  if (!hasImage) return 'Bare land';
  return isUnscaled ? 'The land is there, not yet to scale.' : 'The land is there. Draw the first hole.';
}

interface StepButtonProps {
  readonly onPress: () => void;
  readonly children: string;
}

function StepButton({ onPress, children }: StepButtonProps) {
  return (
    <Button className="button button--small" onPress={onPress}>
      {children}
    </Button>
  );
}
