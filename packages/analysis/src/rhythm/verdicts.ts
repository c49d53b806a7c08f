import type { HoleId, Verdict } from '@loopwright/model';
import type { Finding, LoopFigures } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { RoundContext } from '../round-context.ts';

/**
 * Where the holes that the designer calls weak sit: at the start or finish of a loop, or in a row; and loops without
 * a keeper, once at least half of their holes are judged. Says nothing while nobody has judged.
 *
 * Source: common practice, no source.
 */
export function checkVerdicts(context: RoundContext): readonly Finding[] {
  return context.loops.flatMap((loop) => {
    const verdicts = loop.holes.map((id) => ({ id, verdict: context.holes.get(id)?.verdict ?? 'undecided' }) as const);
    return [
      ...weakPlaces(verdicts, loop, context),
      ...weakTogether(verdicts, loop, context),
      ...fewKeepers(verdicts, loop, context),
    ];
  });
}

interface Judged {
  readonly id: HoleId;
  readonly verdict: Verdict;
}

function weakPlaces(judged: readonly Judged[], { loop }: LoopFigures, { settings }: RoundContext): readonly Finding[] {
  const tier = onlyTier('weak-place-mention', settings);
  return judged.flatMap(({ id, verdict }, i) => {
    const fromEnd = judged.length - i;
    const measured = Math.min(i + 1, fromEnd);
    if (verdict !== 'weak' || measured > tier.limit) return [];
    const detail = { where: i + 1 <= fromEnd ? 'start' : 'finish' };
    return [
      roundFinding({ code: 'weak-place', holes: [id], loop, measured, tier, unit: 'holes', worse: 'less', detail }),
    ];
  });
}

function weakTogether(
  judged: readonly Judged[],
  { loop }: LoopFigures,
  { settings }: RoundContext,
): readonly Finding[] {
  const tier = onlyTier('weak-together-mention', settings);
  const runs: HoleId[][] = [[]];
  for (const { id, verdict } of judged) {
    if (verdict === 'weak') runs[runs.length - 1]?.push(id);
    else runs.push([]);
  }
  return runs.flatMap((run) =>
    run.length < tier.limit || run.length < 2
      ? []
      : [
          roundFinding({
            code: 'weak-together',
            holes: run,
            loop,
            measured: run.length,
            tier,
            unit: 'holes',
            worse: 'more',
          }),
        ],
  );
}

function fewKeepers(judged: readonly Judged[], { loop }: LoopFigures, { settings }: RoundContext): readonly Finding[] {
  const tier = onlyTier('keepers-mention', settings);
  const decided = judged.filter(({ verdict }) => verdict !== 'undecided');
  const keepers = decided.filter(({ verdict }) => verdict === 'keeper').length;
  if (decided.length === 0 || decided.length * 2 < judged.length || keepers >= tier.limit) return [];
  const noticed = { code: 'few-keepers', holes: [], about: loop, loop, measured: keepers, tier } as const;
  return [roundFinding({ ...noticed, unit: 'holes', worse: 'less' })];
}
