import { parseSettingValue } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';

/** Changes a limit for the whole board, or goes back to its default. A value outside what makes sense changes nothing. */
export function changeSetting(edit: EditNamed<'change setting'>, reading: Reading): EditWrites {
  const { setting } = edit;
  const value = edit.value === 'default' ? null : parseSettingValue(setting, edit.value);
  if (value === undefined || value === (reading.plan.settings[setting] ?? null)) return 'nothing';
  return [{ root: 'settings', group: '', part: setting, value }];
}
