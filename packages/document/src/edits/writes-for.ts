import { valueAt, type Write } from '../cells.ts';
import { isSameValue } from '../plain-value.ts';
import type { Reading } from '../reading/reading.ts';
import { changeSetting } from './change-setting.ts';
import { decide, reopen } from './decide.ts';
import type { EditWrites } from './edit-named.ts';
import { isHoleEdit, isRoutingEdit, isSiteEdit } from './families.ts';
import { holeWrites } from './hole-writes.ts';
import { layOutPlan } from './lay-out-plan.ts';
import type { NamedEdit } from './named-edit.ts';
import { routingWrites } from './routing-writes.ts';
import { several } from './several.ts';
import { siteWrites } from './site-writes.ts';

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
  if (isHoleEdit(edit)) return holeWrites(edit, reading);
  if (isRoutingEdit(edit)) return routingWrites(edit, reading);
  if (isSiteEdit(edit)) return siteWrites(edit, reading);
  switch (edit.edit) {
    case 'change setting':
      return changeSetting(edit, reading);
    case 'decide':
      return decide(edit, reading);
    case 'reopen':
      return reopen(edit, reading);
    case 'lay out plan':
      return layOutPlan(edit, reading);
    case 'several':
      return several(edit, reading, writesFor);
    case 'put back what was tried':
      return 'nothing';
  }
}
