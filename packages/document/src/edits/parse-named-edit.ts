import {
  type Fields,
  type HoleId,
  isFields,
  isId,
  isSettingKey,
  LIMITS,
  parseDisposition,
  parseLines,
  parseName,
  parseParChoice,
  parsePart,
  parsePoint,
  parseRelation,
  parseSettingValue,
  parseText,
  parseVerdict,
} from '@loopwright/model';
import type { NamedEdit } from './named-edit.ts';

/**
 * An untrusted value, e.g. from another page's presence, as an edit that can be laid over the plan.
 *
 * Laying out a whole plan is no drag: it is never taken from others this way.
 */
export function parseNamedEdit(value: unknown): NamedEdit | undefined {
  if (!isFields(value)) return undefined;
  if (value.edit === 'change setting') return parseChangeSetting(value);
  if (value.edit === 'decide') {
    const disposition = parseDisposition(value.disposition);
    return disposition && { edit: 'decide', disposition };
  }
  if (!isId(value.routing)) return undefined;
  if (value.edit === 'reopen') {
    const finding = parseText(value.finding, LIMITS.findingKey);
    return finding === undefined ? undefined : { edit: 'reopen', routing: value.routing, finding };
  }
  return isId(value.hole) ? parseOfHole(value, { routing: value.routing, hole: value.hole }) : undefined;
}

function parseChangeSetting(value: Fields): NamedEdit | undefined {
  const { setting } = value;
  if (typeof setting !== 'string' || !isSettingKey(setting)) return undefined;
  const chosen = value.value === 'default' ? 'default' : parseSettingValue(setting, value.value);
  return chosen === undefined ? undefined : { edit: 'change setting', setting, value: chosen };
}

interface OfHole {
  readonly routing: string;
  readonly hole: string;
}

function parseOfHole(value: Fields, of: OfHole): NamedEdit | undefined {
  switch (value.edit) {
    case 'move part':
    case 'pin':
    case 'unpin':
      return parseOfPart(value, of);
    case 'move hole': {
      const by = parsePoint(value.by);
      return by && { edit: 'move hole', ...of, by };
    }
    case 'reverse hole':
    case 'take out':
      return { edit: value.edit, ...of };
    case 'move in the round':
    case 'bring back': {
      const after = parseAfter(value.after);
      return isId(value.loop) && after ? { edit: value.edit, ...of, loop: value.loop, after } : undefined;
    }
    case 'swap places':
      return isId(value.with) ? { edit: 'swap places', ...of, with: value.with } : undefined;
    case 'relate':
    case 'unrelate': {
      const relation = parseRelation(value.relation);
      return relation && { edit: value.edit, ...of, relation };
    }
    default:
      return parseJudgement(value, of);
  }
}

function parseAfter(value: unknown): HoleId | 'first' | undefined {
  return isId(value) ? value : undefined; // 'first' has the form of an id
}

function parseOfPart(value: Fields, of: OfHole): NamedEdit | undefined {
  const part = parsePart(value.part);
  if (part === undefined) return undefined;
  if (value.edit !== 'move part') return { edit: value.edit === 'pin' ? 'pin' : 'unpin', ...of, part };
  const to = parsePoint(value.to);
  return to && { edit: 'move part', ...of, part, to };
}

function parseJudgement(value: Fields, of: OfHole): NamedEdit | undefined {
  if (value.edit === 'set par') {
    const par = parseParChoice(value.par);
    const { sex } = value;
    return par && (sex === 'men' || sex === 'women') ? { edit: 'set par', ...of, sex, par } : undefined;
  }
  if (value.edit === 'judge') {
    const verdict = parseVerdict(value.verdict);
    return verdict && { edit: 'judge', ...of, verdict, reason: parseLines(value.reason, LIMITS.note) ?? '' };
  }
  if (value.edit !== 'name hole') return undefined;
  return { edit: 'name hole', ...of, name: parseName(value.name, LIMITS.name) ?? '' };
}
