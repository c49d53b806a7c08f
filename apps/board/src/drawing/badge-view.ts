import type { FigureChange, FindingChange } from '@loopwright/analysis';
import { changeSentence } from '@loopwright/analysis/wording';
import type { Change } from '../board/parts.ts';
import type { Names } from '../reading/names.ts';

/** One line at the pointer. */
export interface BadgeLine {
  readonly sign: string;
  readonly tone: 'stop' | 'look' | 'mention' | 'better';
  readonly text: string;
}

const SIGNS = { stop: '◆', look: '▲', mention: '●', better: '✓' } as const;

/** What stands at the pointer while dragging: only the worst thing gained and the worst thing got rid of. */
export function toBadge({ ripple }: Change, names: Names): readonly BadgeLine[] {
  const lines: BadgeLine[] = [];
  if (ripple.worstGain) lines.push(lineOf(ripple.worstGain, 'worse', names));
  if (ripple.worstLoss) lines.push(lineOf(ripple.worstLoss, 'better', names));
  return lines;
}

function lineOf(change: FindingChange | FigureChange, way: 'worse' | 'better', names: Names): BadgeLine {
  const tone = way === 'better' ? 'better' : toneOf(change);
  const text = 'figure' in change ? figureWords(change, names) : changeSentence(change, names);
  return { sign: SIGNS[tone], tone, text };
}

function toneOf(change: FindingChange | FigureChange): BadgeLine['tone'] {
  return 'figure' in change ? 'mention' : (change.after?.severity ?? 'look');
}

function figureWords({ of, figure, before, after }: FigureChange, names: Names): string {
  const by = names.lengthChange(before, after);
  if (of.kind === 'walk') {
    const ends = `${of.from ? names.number(of.from) : 'base'} → ${of.to ? names.number(of.to) : 'base'}`;
    return figure === 'walk-back' ? `Walk ${ends} goes back ${by}` : `Walk ${ends} ${by}`;
  }
  return of.kind === 'hole' ? `Hole ${names.number(of.hole)} ${by}` : `${by}`;
}
