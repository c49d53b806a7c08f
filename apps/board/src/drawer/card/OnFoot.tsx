import type { CardRound } from './card-view.ts';

/** What is walked in a round, and how long that takes. */
export function OnFoot({ round, unit }: { readonly round: CardRound; readonly unit: string }) {
  return (
    <dl className="facts">
      <dt>Walks in all, {round.total.name}</dt>
      <dd>
        {round.walked} {unit}
      </dd>
      <dt>On foot in all, straight lines</dt>
      <dd>
        {round.onFoot} {unit}
      </dd>
      <dt>Walking time without the play</dt>
      <dd>{round.time}</dd>
      <dt>Climb</dt>
      <dd>no ground yet</dd>
    </dl>
  );
}
