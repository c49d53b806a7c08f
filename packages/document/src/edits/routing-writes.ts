import type { Reading } from '../reading/reading.ts';
import { addLoop } from './add-loop.ts';
import { addRound } from './add-round.ts';
import { changeLoop } from './change-loop.ts';
import { changeRound } from './change-round.ts';
import { copyLoop } from './copy-loop.ts';
import { copyRouting } from './copy-routing.ts';
import type { EditWrites } from './edit-named.ts';
import { joinLoops } from './join-loops.ts';
import { lockRouting } from './lock-routing.ts';
import { nameRouting } from './name-routing.ts';
import { removeLoop } from './remove-loop.ts';
import { removeRound } from './remove-round.ts';
import { removeRouting } from './remove-routing.ts';
import { reverseLoop } from './reverse-loop.ts';
import type { RoutingEdit } from './routing-edit.ts';
import { splitLoop } from './split-loop.ts';
import { startRouting } from './start-routing.ts';

/** What an edit of a routing, its loops or its rounds would write. */
export function routingWrites(edit: RoutingEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'start routing':
      return startRouting(edit, reading);
    case 'copy routing':
      return copyRouting(edit, reading);
    case 'name routing':
      return nameRouting(edit, reading);
    case 'lock routing':
    case 'unlock routing':
      return lockRouting(edit, reading);
    case 'remove routing':
      return removeRouting(edit, reading);
    case 'add loop':
      return addLoop(edit, reading);
    case 'change loop':
      return changeLoop(edit, reading);
    case 'remove loop':
      return removeLoop(edit, reading);
    case 'split loop':
      return splitLoop(edit, reading);
    case 'join loops':
      return joinLoops(edit, reading);
    case 'reverse loop':
      return reverseLoop(edit, reading);
    case 'copy loop':
      return copyLoop(edit, reading);
    case 'add round':
      return addRound(edit, reading);
    case 'change round':
      return changeRound(edit, reading);
    case 'remove round':
      return removeRound(edit, reading);
  }
}
