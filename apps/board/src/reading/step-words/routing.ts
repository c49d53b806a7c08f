import type { RoutingEdit } from '@loopwright/document';
import type { LoopId } from '@loopwright/model';
import { LOOP_GONE } from '../names.ts';
import { quoted } from '../short-name.ts';
import type { StepNames } from './step-names.ts';

/** What was done to a routing, a loop or a round, as undo names it. */
export function routingStepWords(edit: RoutingEdit, names: StepNames): string {
  const loop = (id: LoopId) => {
    const name = names.loop?.(id) ?? LOOP_GONE;
    return name === LOOP_GONE ? 'a loop' : `loop ${quoted(name)}`;
  };
  switch (edit.edit) {
    case 'start routing':
      return `start of routing ${quoted(edit.name)}`;
    case 'copy routing':
      return `copy of a routing as ${quoted(edit.name)}`;
    case 'name routing':
      return 'name of a routing';
    case 'lock routing':
      return 'locking of a routing';
    case 'unlock routing':
      return 'unlocking of a routing';
    case 'remove routing':
      return 'removal of a routing';
    case 'add loop':
      return `adding of loop ${quoted(edit.loop.name)}`;
    case 'change loop':
      return `change of ${loop(edit.loop)}`;
    case 'remove loop':
      return 'removal of a loop';
    case 'split loop':
      return `split of ${loop(edit.loop)}`;
    case 'join loops':
      return `join to ${loop(edit.loop)}`;
    case 'reverse loop':
      return `reversal of ${loop(edit.loop)}`;
    case 'copy loop':
      return `copy of ${loop(edit.loop)}`;
    case 'add round':
      return `adding of round ${quoted(edit.round.name)}`;
    case 'change round':
      return 'change of a round';
    case 'remove round':
      return 'removal of a round';
  }
}
