import { valueAt, type Write } from '../cells.ts';
import { isSameValue } from '../plain-value.ts';
import type { Reading } from '../reading/reading.ts';
import { bringBack } from './bring-back.ts';
import { changeSetting } from './change-setting.ts';
import { decide, reopen } from './decide.ts';
import type { EditWrites } from './edit-named.ts';
import { judge } from './judge.ts';
import { layOutPlan } from './lay-out-plan.ts';
import { moveHole } from './move-hole.ts';
import { moveInTheRound } from './move-in-the-round.ts';
import { movePart } from './move-part.ts';
import { nameHole } from './name-hole.ts';
import type { NamedEdit } from './named-edit.ts';
import { pin } from './pin.ts';
import { relate } from './relate.ts';
import { reverseHole } from './reverse-hole.ts';
import { setPar } from './set-par.ts';
import { swapPlaces } from './swap-places.ts';
import { takeOut } from './take-out.ts';

/**
 * What an edit would write on the document as it reads now: pure, so that the same function makes a change and shows a
 * drag before it is made. Keys that already hold the value are left out.
 */
export function writesFor(edit: NamedEdit, reading: Reading): EditWrites {
  const writes = allWritesFor(edit, reading);
  if (typeof writes === 'string') return writes;
  const changing = writes.filter((write: Write) => !isSameValue(valueAt(reading.cells, write), write.value));
  return changing.length > 0 ? changing : 'nothing';
}

function allWritesFor(edit: NamedEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'move part':
      return movePart(edit, reading);
    case 'move hole':
      return moveHole(edit, reading);
    case 'reverse hole':
      return reverseHole(edit, reading);
    case 'move in the round':
      return moveInTheRound(edit, reading);
    case 'take out':
      return takeOut(edit, reading);
    case 'bring back':
      return bringBack(edit, reading);
    case 'swap places':
      return swapPlaces(edit, reading);
    case 'set par':
      return setPar(edit, reading);
    case 'judge':
      return judge(edit, reading);
    case 'pin':
    case 'unpin':
      return pin(edit, reading);
    case 'relate':
    case 'unrelate':
      return relate(edit, reading);
    case 'name hole':
      return nameHole(edit, reading);
    case 'change setting':
      return changeSetting(edit, reading);
    case 'decide':
      return decide(edit, reading);
    case 'reopen':
      return reopen(edit, reading);
    case 'lay out plan':
      return layOutPlan(edit, reading);
    default:
      return 'nothing';
  }
}
