import { SETTINGS } from '@loopwright/model';
import type { Finding, Severity } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { isFindingCode } from '../findings/catalogue.ts';
import { CLEARANCE_WORDS } from './clearance-words.ts';
import { DIRECTION_WORDS } from './direction-words.ts';
import { RHYTHM_WORDS } from './rhythm-words.ts';
import { SITE_WORDS } from './site-words.ts';
import { WALK_WORDS } from './walk-words.ts';
import { capital, detail, type ReaderNames, type Wording } from './words.ts';

/** The words of every finding in the catalogue. */
export const WORDS: Readonly<Record<FindingCode, Wording>> = {
  ...CLEARANCE_WORDS,
  ...SITE_WORDS,
  ...WALK_WORDS,
  ...DIRECTION_WORDS,
  ...RHYTHM_WORDS,
};

/** Shown wherever findings or their limits are, and never left out. */
export const SAFETY_CAUTION =
  'Loopwright screens a plan; it does not certify one. There is no official standard for how far holes must be from each other or from the boundary. Distances and angles are practice and single published figures: a qualified designer, a study of the site and local codes decide.';

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = { stop: 'Stop', look: 'Look', mention: 'Mention' };

export function severityWord(severity: Severity): string {
  return SEVERITY_WORDS[severity];
}

/** What findings of one code are headed with. */
export function titleOf(code: string): string {
  return isFindingCode(code) ? WORDS[code].title : code.replaceAll('-', ' ');
}

/**
 * One plain sentence for a finding, with the reader's own numbers and units.
 *
 * It says what was noticed and by how much, never that it is acceptable: not even where the designer has stated it.
 *
 * @throws RangeError for a code that is not in the catalogue: the caller's bug
 */
export function sentenceOf(finding: Finding, names: ReaderNames): string {
  const words = wordsOf(finding);
  const said = `${capital(words.who(finding, names))} ${words.does(finding, names)}: ${words.says(finding, names)}.`;
  const stated = detail(finding, 'stated');
  return stated === '' ? said : `${said} Stated by the designer (${stated}); it has still to be checked.`;
}

/** The figures of a finding alone, without who and what: "31 m apart; the limit is 60 m". */
export function figuresOf(finding: Finding, names: ReaderNames): string {
  return wordsOf(finding).says(finding, names);
}

/** Where the limit comes from: the setting's own source, in words a client can read. */
export function sourceOf({ setting }: Finding): string {
  return SETTINGS[setting].source;
}

export function wordsOf({ code }: Finding): Wording {
  if (!isFindingCode(code)) throw new RangeError(`wordsOf: ${code} is not in the catalogue`);
  return WORDS[code];
}
