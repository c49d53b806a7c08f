import type { SettingKey } from '@loopwright/model';

/** What a finding code is about, for grouping. */
export type FindingSubject = 'clearance' | 'site' | 'walk' | 'direction' | 'rhythm';

interface Entry {
  readonly subject: FindingSubject;
  /** The limits that can raise it: a finding's `setting` is one of them. */
  readonly settings: readonly SettingKey[];
}

/** Every finding there is; `FINDINGS.md` says what each means and where its limits come from. */
export const CATALOGUE = {
  'lines-cross': { subject: 'clearance', settings: ['lines-cross-stop'] },
  'holes-alongside': {
    subject: 'clearance',
    settings: [
      'spacing-stop',
      'spacing-look',
      'spacing-mention',
      'spacing-next-stop',
      'spacing-next-look',
      'spacing-next-mention',
    ],
  },
  'landing-tee': { subject: 'clearance', settings: ['landing-tee-stop', 'landing-tee-look', 'landing-tee-mention'] },
  'landing-green': {
    subject: 'clearance',
    settings: ['landing-green-stop', 'landing-green-look', 'landing-green-mention'],
  },
  'landing-landing': {
    subject: 'clearance',
    settings: ['landing-landing-stop', 'landing-landing-look', 'landing-landing-mention'],
  },
  'landing-line': {
    subject: 'clearance',
    settings: ['landing-line-stop', 'landing-line-look', 'landing-line-mention'],
  },
  'green-green': { subject: 'clearance', settings: ['green-green-stop', 'green-green-look', 'green-green-mention'] },
  'green-tee': { subject: 'clearance', settings: ['green-tee-stop', 'green-tee-look', 'green-tee-mention'] },
  'green-next-tee': {
    subject: 'clearance',
    settings: ['green-next-tee-stop', 'green-next-tee-look', 'green-next-tee-mention'],
  },
  'tee-in-fan': {
    subject: 'clearance',
    settings: [
      'fan-tee-stop',
      'fan-next-stop',
      'fan-next-look',
      'fan-next-mention',
      'fan-inner-angle',
      'fan-outer-angle',
    ],
  },
  'green-in-fan': {
    subject: 'clearance',
    settings: [
      'fan-green-stop',
      'fan-next-stop',
      'fan-next-look',
      'fan-next-mention',
      'fan-inner-angle',
      'fan-outer-angle',
    ],
  },
  'landing-in-fan': { subject: 'clearance', settings: ['fan-inner-angle', 'fan-outer-angle'] },
  'landing-in-corridor': {
    subject: 'clearance',
    settings: ['corridor-tee', 'corridor-landing', 'corridor-green'],
  },
  'tee-in-corridor': { subject: 'clearance', settings: ['corridor-tee', 'corridor-landing', 'corridor-green'] },
  'green-in-corridor': { subject: 'clearance', settings: ['corridor-tee', 'corridor-landing', 'corridor-green'] },
  'walk-landing': {
    subject: 'clearance',
    settings: ['walk-landing-stop', 'walk-landing-look', 'walk-landing-mention'],
  },
  'walk-in-fan': { subject: 'clearance', settings: ['walk-in-fan-mention'] },

  'edge-line': { subject: 'site', settings: ['edge-line-stop', 'edge-line-look', 'edge-line-mention'] },
  'edge-landing': { subject: 'site', settings: ['edge-landing-stop', 'edge-landing-look', 'edge-landing-mention'] },
  'edge-green': { subject: 'site', settings: ['edge-green-stop', 'edge-green-look', 'edge-green-mention'] },
  'edge-tee': { subject: 'site', settings: ['edge-tee-stop', 'edge-tee-mention'] },
  'public-beside-line': {
    subject: 'site',
    settings: ['public-tee-stop', 'public-landing-stop', 'public-green-stop', 'public-look'],
  },
  'public-in-fan': {
    subject: 'site',
    settings: ['public-landing-stop', 'public-green-stop', 'public-look', 'public-angle'],
  },
  'in-range-fan': { subject: 'site', settings: ['fan-inner-angle', 'fan-outer-angle'] },
  'range-and-public': { subject: 'site', settings: ['fan-inner-angle', 'fan-outer-angle'] },
  'carry-over-feature': { subject: 'site', settings: ['feature-carry'] },
  'landing-on-feature': { subject: 'site', settings: ['feature-mow'] },
  'tee-on-feature': { subject: 'site', settings: ['feature-build'] },
  'green-on-feature': { subject: 'site', settings: ['feature-build'] },

  'long-walk': { subject: 'walk', settings: ['long-walk-stop', 'long-walk-look', 'long-walk-mention'] },
  'long-walk-between-loops': {
    subject: 'walk',
    settings: ['long-walk-between-loops-stop', 'long-walk-between-loops-look', 'long-walk-between-loops-mention'],
  },
  'long-walk-in-all': { subject: 'walk', settings: ['long-walk-in-all-look', 'long-walk-in-all-mention'] },
  'walk-crosses-line-of-play': {
    subject: 'walk',
    settings: ['walk-crossing-stop', 'walk-crossing-short-of-green', 'walk-crossing-look', 'walk-crossing-mention'],
  },
  'walk-crosses-road': { subject: 'walk', settings: ['walk-crossing-road'] },
  'walk-crosses-range': { subject: 'walk', settings: ['walk-crossing-range'] },
  'walk-crosses-water': { subject: 'walk', settings: ['walk-crossing-water'] },
  'walk-over-feature': { subject: 'walk', settings: ['feature-walk'] },

  'directions-used': { subject: 'direction', settings: ['directions-used-look', 'directions-used-mention'] },
  'runs-one-way': { subject: 'direction', settings: ['runs-one-way-look', 'runs-one-way-mention'] },
  'three-one-way': { subject: 'direction', settings: ['three-one-way-angle'] },
  'next-one-way': { subject: 'direction', settings: ['next-one-way-look', 'next-one-way-mention'] },
  'side-by-side-one-way': { subject: 'direction', settings: ['side-by-side-apart'] },
  'par-threes-one-way': { subject: 'direction', settings: ['par-threes-one-way-look', 'par-threes-one-way-mention'] },
  'par-threes-alike': { subject: 'direction', settings: ['par-threes-alike'] },

  'par-run': { subject: 'rhythm', settings: ['par-run-look', 'par-run-mention'] },
  'par-threes-in-a-row': {
    subject: 'rhythm',
    settings: ['par-threes-in-a-row-look', 'par-threes-in-a-row-mention'],
  },
  'par-fives-in-a-row': { subject: 'rhythm', settings: ['par-fives-in-a-row-look', 'par-fives-in-a-row-mention'] },
  'par-three-early': { subject: 'rhythm', settings: ['par-three-early-mention'] },
  'par-three-late': { subject: 'rhythm', settings: ['par-three-late-look', 'par-three-late-mention'] },
  'par-three-last': { subject: 'rhythm', settings: ['par-three-last-mention'] },
  'long-par-three-early': { subject: 'rhythm', settings: ['long-par-three-mention'] },
  'reachable-par-five-early': { subject: 'rhythm', settings: ['reachable-par-five-mention'] },
  'short-holes-close': { subject: 'rhythm', settings: ['short-holes-apart'] },
  'same-club-par-threes': { subject: 'rhythm', settings: ['same-club-par-threes-mention'] },
  'same-approach': { subject: 'rhythm', settings: ['same-approach-mention'] },
  'bends-one-way': { subject: 'rhythm', settings: ['bends-one-way-look', 'bends-one-way-mention'] },
  'par-three-range': { subject: 'rhythm', settings: ['par-three-range-look', 'par-three-range-mention'] },
  'par-threes-hide-length': { subject: 'rhythm', settings: ['par-three-hidden-mention'] },
  'loop-par-apart': { subject: 'rhythm', settings: ['loop-par-apart-look', 'loop-par-apart-mention'] },
  'loop-length-apart': { subject: 'rhythm', settings: ['loop-length-apart-look', 'loop-length-apart-mention'] },
  'last-to-first': { subject: 'rhythm', settings: ['last-to-first-look', 'last-to-first-mention'] },
  'loop-to-first': { subject: 'rhythm', settings: ['loop-to-first-mention'] },
  queue: { subject: 'rhythm', settings: ['queue-wait-mention'] },
  'weak-place': { subject: 'rhythm', settings: ['weak-place-mention'] },
  'weak-together': { subject: 'rhythm', settings: ['weak-together-mention'] },
  'few-keepers': { subject: 'rhythm', settings: ['keepers-mention'] },
  'mark-unused': { subject: 'rhythm', settings: ['mark-taken-up'] },
} as const satisfies Readonly<Record<string, Entry>>;

export type FindingCode = keyof typeof CATALOGUE;

/** Whether a code is in the catalogue. */
export function isFindingCode(code: string): code is FindingCode {
  return Object.hasOwn(CATALOGUE, code);
}
