import { lazy, Suspense } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { GRABBED_HINT } from './bead-words.ts';
import { HandPreviewCard } from './HandPreview.tsx';
import { onString } from './on-string.tsx';
import { RoundHead } from './RoundHead.tsx';
import { useRound } from './use-round.ts';

const LoopQuestions = lazy(() => import('./LoopQuestions.tsx').then((asked) => ({ default: asked.LoopQuestions })));

/** The round as a string of beads in playing order, the walks on the thread between them, the spare tray below. */
export function Round(props: RoundProps) {
  const round = useRound(props);
  const { items, held, asked } = round;
  return (
    <nav className={`round${held ? ' round--holding' : ''}`} aria-labelledby="round-title">
      <RoundHead
        rounds={props.routing.rounds}
        shown={round.shown}
        totals={round.totals}
        unit={round.unit}
        onShow={round.onShow}
      />
      <p id="round-keys" className="only-heard">
        Enter picks the hole up to move it in the round. {GRABBED_HINT} Shift and arrows choose several. Arrow right
        goes to the walk from its green. Delete takes it out to the spare tray.
      </p>
      <p id="thread-keys" className="only-heard">
        Arrow up and down go from walk to walk, arrow left back to the hole.
      </p>
      <div className="round__string" ref={round.string} {...round.onString}>
        <ol className="round__beads" style={{ '--spare-holes': String(round.spare) }}>
          {items.map((item) => onString({ item, round, routing: props.routing }))}
        </ol>
      </div>
      <div className="round__ghost" ref={round.ghost} aria-hidden="true" hidden={held?.by !== 'pointer'}>
        {round.inHand}
      </div>
      {round.preview && <HandPreviewCard preview={round.preview} card={round.card} />}
      <p className="only-heard" aria-live="assertive">
        {round.announced}
      </p>
      <p className="only-heard" role="status">
        {held?.by === 'keys' && round.preview?.said}
      </p>
      {asked && (
        <Suspense fallback={null}>
          <LoopQuestions
            question={asked.question}
            loop={asked.loop}
            routing={props.routing}
            bases={props.plan.site.bases}
            onAction={round.onLoopAction}
            onClose={round.onAnswered}
          />
        </Suspense>
      )}
    </nav>
  );
}
