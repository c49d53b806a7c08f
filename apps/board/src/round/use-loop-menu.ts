import type { Loop, LoopId, Routing } from '@loopwright/model';
import { useState } from 'react';
import type { DoEdit } from '../board/parts.ts';
import { freshId } from '../reading/fresh-id.ts';
import { useSteady } from '../reading/use-steady.ts';
import type { LoopChoice } from './LoopMenu.tsx';
import type { LoopQuestion } from './LoopQuestions.tsx';
import { editOfLoopAction, type LoopAction } from './loop-actions.ts';

/** What a loop's menu does: at once, or after a question. */
export function useLoopMenu(routing: Routing, edit: DoEdit) {
  const [asked, setAsked] = useState<{ readonly question: LoopQuestion; readonly loop: Loop }>();
  const act = (loop: LoopId, action: LoopAction) => {
    const step = editOfLoopAction(routing, loop, action, freshId);
    if (step) edit(step);
  };
  const choose = (id: LoopId, choice: LoopChoice) => {
    const loop = routing.loops.find((each) => each.id === id);
    if (!loop) return;
    if (choice.choose === 'split') act(id, { do: 'split', after: choice.after });
    else if (choice.choose === 'reverse' || choice.choose === 'copy' || choice.choose === 'join')
      act(id, { do: choice.choose });
    else setAsked({ question: choice.choose, loop });
  };
  return {
    asked,
    onLoopChoice: useSteady(choose),
    onLoopAction: (action: LoopAction) => asked && act(asked.loop.id, action),
    onAnswered: () => setAsked(undefined),
  };
}
