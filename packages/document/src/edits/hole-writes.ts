import type { Reading } from '../reading/reading.ts';
import { addTurnPoint } from './add-turn-point.ts';
import { bringBack } from './bring-back.ts';
import { copyHole } from './copy-hole.ts';
import { drawHole } from './draw-hole.ts';
import type { EditWrites } from './edit-named.ts';
import { exchangeCorridors } from './exchange-corridors.ts';
import type { HoleEdit } from './hole-edit.ts';
import { judge } from './judge.ts';
import { lengthen } from './lengthen.ts';
import { moveHole } from './move-hole.ts';
import { moveHoles } from './move-holes.ts';
import { moveInTheRound } from './move-in-the-round.ts';
import { movePart } from './move-part.ts';
import { nameHole } from './name-hole.ts';
import { noteHole } from './note-hole.ts';
import { pin } from './pin.ts';
import { proposeTee } from './propose-tee.ts';
import { relate } from './relate.ts';
import { removeHole } from './remove-hole.ts';
import { removeTurnPoint } from './remove-turn-point.ts';
import { reverseHole } from './reverse-hole.ts';
import { setCorridor } from './set-corridor.ts';
import { setPar } from './set-par.ts';
import { setWaypoints } from './set-waypoints.ts';
import { shapeGreen } from './shape-green.ts';
import { swapPlaces } from './swap-places.ts';
import { takeOut } from './take-out.ts';

/** What an edit of a hole would write. */
export function holeWrites(edit: HoleEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'draw hole':
      return drawHole(edit, reading);
    case 'copy hole':
      return copyHole(edit, reading);
    case 'remove hole':
      return removeHole(edit, reading);
    case 'move hole':
      return moveHole(edit, reading);
    case 'move holes':
      return moveHoles(edit, reading);
    case 'reverse hole':
      return reverseHole(edit, reading);
    case 'exchange corridors':
      return exchangeCorridors(edit, reading);
    case 'move in the round':
      return moveInTheRound(edit, reading);
    case 'take out':
      return takeOut(edit, reading);
    case 'bring back':
      return bringBack(edit, reading);
    case 'swap places':
      return swapPlaces(edit, reading);
    case 'judge':
      return judge(edit, reading);
    case 'relate':
    case 'unrelate':
      return relate(edit, reading);
    case 'name hole':
      return nameHole(edit, reading);
    case 'note hole':
      return noteHole(edit, reading);
    default:
      return partWrites(edit, reading);
  }
}

type PartEdit = Extract<
  HoleEdit,
  {
    readonly edit:
      | 'move part'
      | 'pin'
      | 'unpin'
      | 'add turn point'
      | 'remove turn point'
      | 'lengthen'
      | 'shape green'
      | 'propose tee'
      | 'set waypoints'
      | 'set corridor'
      | 'set par';
  }
>;

/** What an edit of one part of a hole would write. */
function partWrites(edit: PartEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'move part':
      return movePart(edit, reading);
    case 'pin':
    case 'unpin':
      return pin(edit, reading);
    case 'add turn point':
      return addTurnPoint(edit, reading);
    case 'remove turn point':
      return removeTurnPoint(edit, reading);
    case 'lengthen':
      return lengthen(edit, reading);
    case 'shape green':
      return shapeGreen(edit, reading);
    case 'propose tee':
      return proposeTee(edit, reading);
    case 'set waypoints':
      return setWaypoints(edit, reading);
    case 'set corridor':
      return setCorridor(edit, reading);
    case 'set par':
      return setPar(edit, reading);
  }
}
