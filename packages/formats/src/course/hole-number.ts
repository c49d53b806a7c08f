import type { Tags } from '../geojson/element.ts';

/** A hole's number as mapped: a place from 1 on, in the course or in a loop of it. */
export interface MappedNumber {
  /** Upper case letters or a word before or after the number; '' where there are none. */
  readonly group: string;
  readonly number: number;
  readonly from: 'ref' | 'name';
  /** More than one number was given, e.g. '3;12'; the first is used. */
  readonly others: boolean;
}

const LEADING = /^(\p{L}{1,12})?[\s.:#-]*0*(\d{1,2})(?!\d)/u;
const TRAILING = /^#?0*(\d{1,2})\s?(\p{L})$/u;
const IN_A_NAME = /(?:^|[^\d])0*(\d{1,2})(?!\d)/u;
/** Words that say 'hole', not which loop. */
const NOT_A_GROUP = new Set(['HOLE', 'H', 'NO', 'NR', 'HOYO', 'TROU', 'BAHN', 'LOCH', 'BUCA', 'BURACO', 'HAL', 'BANE']);

/** The number of a hole from its `ref`, else from its name; undefined when neither holds one from 1 to 99. */
export function mappedNumber(tags: Tags): MappedNumber | undefined {
  const ref = tags.ref?.trim().toUpperCase();
  if (ref) {
    const others = /[;,/]/.test(ref);
    const first = ref.split(/[;,/]/)[0]?.trim() ?? '';
    const trailing = TRAILING.exec(first);
    if (trailing) return numbered(trailing[2], trailing[1], 'ref', others);
    const leading = LEADING.exec(first);
    if (leading) return numbered(leading[1], leading[2], 'ref', others);
  }
  const inName = IN_A_NAME.exec(tags.name ?? '');
  return inName ? numbered('', inName[1], 'name', false) : undefined;
}

function numbered(
  group: string | undefined,
  digits: string | undefined,
  from: 'ref' | 'name',
  others: boolean,
): MappedNumber | undefined {
  const number = Number(digits);
  if (!(number >= 1)) return undefined;
  return { group: group === undefined || NOT_A_GROUP.has(group) ? '' : group, number, from, others };
}

/** A hole's name, when the mapper gave one that says more than its number. */
export function nameBesideNumber(tags: Tags): string | undefined {
  const name = tags.name?.trim();
  if (!name) return undefined;
  const rest = name
    .replace(/\d+/g, '')
    .replace(/(st|nd|rd|th)\b/gi, '')
    .replace(/[\s\p{P}]+/gu, ' ')
    .trim()
    .toUpperCase();
  return rest === '' || NOT_A_GROUP.has(rest) ? undefined : name;
}
