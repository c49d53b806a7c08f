import {
  type Fields,
  isFields,
  isId,
  isSettingKey,
  LIMITS,
  parseDisposition,
  parseEach,
  parseSettingValue,
  parseText,
} from '@loopwright/model';
import type { NamedEdit } from './named-edit.ts';
import { parseHoleEdit } from './parse-hole-edit.ts';
import { parseRoutingEdit } from './parse-routing-edit.ts';
import { parseSiteEdit } from './parse-site-edit.ts';

/** Edits done as one step that are taken from others; nobody drags more at once. */
const MOST_EDITS = 200;

/**
 * An untrusted value, e.g. from another page's presence, as an edit that can be laid over the plan.
 *
 * Laying out a whole plan is no drag: it is never taken from others this way. Of several edits, none may be several again.
 */
export function parseNamedEdit(value: unknown): NamedEdit | undefined {
  if (!isFields(value)) return undefined;
  if (value.edit !== 'several') return parseSingle(value);
  const does = parseText(value.does, LIMITS.name);
  const edits = parseEach(value.edits, MOST_EDITS, (each) => (isFields(each) ? parseSingle(each) : undefined));
  return does === undefined || !edits ? undefined : { edit: 'several', does, edits };
}

function parseSingle(value: Fields): NamedEdit | undefined {
  switch (value.edit) {
    case 'change setting':
      return parseChangeSetting(value);
    case 'decide': {
      const disposition = parseDisposition(value.disposition);
      return disposition && { edit: 'decide', disposition };
    }
    case 'reopen': {
      const finding = parseText(value.finding, LIMITS.findingKey);
      return isId(value.routing) && finding !== undefined
        ? { edit: 'reopen', routing: value.routing, finding }
        : undefined;
    }
    default:
      return parseHoleEdit(value) ?? parseRoutingEdit(value) ?? parseSiteEdit(value);
  }
}

function parseChangeSetting(value: Fields): NamedEdit | undefined {
  const { setting } = value;
  if (typeof setting !== 'string' || !isSettingKey(setting)) return undefined;
  const chosen = value.value === 'default' ? 'default' : parseSettingValue(setting, value.value);
  return chosen === undefined ? undefined : { edit: 'change setting', setting, value: chosen };
}
