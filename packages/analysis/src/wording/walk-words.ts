import type { Finding } from '../figures.ts';
import { amount, detail, detailLength, hole, inRound, limit, type ReaderNames, type Wording } from './words.ts';

/** "walk 6 → 7", from the last of the finding's holes: what is crossed comes before them. */
function walk(finding: Finding, names: ReaderNames, crossed = 0): string {
  const ends = finding.holes.slice(crossed).map((id) => names.number(id));
  return ends.length === 2 ? `walk ${ends.join(' → ')}` : `the walk between the base and ${ends.join('')}`;
}

const length = (title: string): Wording => ({
  title,
  who: (finding, names) => walk(finding, names),
  does: () => 'is long',
  says: (finding, names) => `${names.length(finding.measured)}; ${limit(finding, names)}`,
});

const crosses = (title: string, does: (finding: Finding, names: ReaderNames) => string): Wording => ({
  title,
  who: (finding, names) => walk(finding, names),
  does,
  says: (finding, names) =>
    finding.unit === 'm' ? `for ${names.length(finding.measured)}` : amount(finding.measured, finding, names),
});

const feature = (finding: Finding, names: ReaderNames): string => {
  const id = finding.features[0];
  return id === undefined ? 'a feature' : names.feature(id);
};

/** What walks cross, and how long they are. */
export const WALK_WORDS = {
  'long-walk': length('Long walk'),
  'long-walk-between-loops': length('Long walk between loops'),
  'long-walk-in-all': {
    title: 'Much walking in all',
    who: (finding) => `the walks ${inRound(finding)}`,
    does: () => 'are long together',
    says: (finding, names) => `${names.length(finding.measured)}; ${limit(finding, names)}`,
  },
  'walk-crosses-line-of-play': {
    title: 'Walk across a line of play',
    who: (finding, names) => walk(finding, names, 1),
    does: (finding, names) => `crosses ${crossingPlace(finding, names)}`,
    says: (finding, names) => `${detailLength(finding, 'ahead', names)} from the tee, on its line of play`,
  },
  'walk-crosses-road': crosses('Walk across a road', (finding, names) => `crosses ${feature(finding, names)}`),
  'walk-crosses-range': crosses(
    'Walk over the practice range',
    (finding, names) => `goes over ${feature(finding, names)}`,
  ),
  'walk-crosses-water': {
    title: 'Walk across water',
    who: (finding, names) => walk(finding, names),
    does: (finding, names) => `crosses ${feature(finding, names)}`,
    says: (finding, names) =>
      `${amount(finding.measured, finding, names)}; ${finding.measured === 1 ? 'a bridge is' : 'bridges are'} needed`,
  },
  'walk-over-feature': {
    title: 'Walk over ground that may not be walked',
    who: (finding, names) => walk(finding, names),
    does: (finding, names) => `${finding.measured <= 0 ? 'goes over' : 'passes close to'} ${feature(finding, names)}`,
    says: (finding, names) =>
      finding.measured <= 0
        ? `${finding.measured < 0 ? `for ${names.length(-finding.measured)}; ` : ''}it may not be walked`
        : `${names.length(finding.measured)} away, and ${names.length(finding.limit)} are to be kept`,
  },
} as const satisfies Readonly<Record<string, Wording>>;

function crossingPlace(finding: Finding, names: ReaderNames): string {
  const number = hole(finding, 0, names);
  switch (detail(finding, 'crossing')) {
    case 'ahead of the tee':
      return `in front of tee ${number}`;
    case 'at a landing area':
      return `the landing area of ${number}`;
    case 'short of the green':
      return `short of green ${number}`;
    default:
      return `the line of play of ${number}`;
  }
}
