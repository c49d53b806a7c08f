import type { Finding } from '../figures.ts';
import {
  awayWords,
  detail,
  detailLength,
  hole,
  limit,
  limitThere,
  offLine,
  type ReaderNames,
  type Wording,
} from './words.ts';

const feature = (finding: Finding, names: ReaderNames, place = 0): string => {
  const id = finding.features[place];
  return id === undefined ? 'a feature' : names.feature(id);
};

const edge = (title: string, what: string): Wording => ({
  title,
  who: (finding, names) => `${what} ${hole(finding, 0, names)}`,
  does: (finding) => (finding.measured < 0 ? 'lies outside the boundary' : 'lies close to the boundary'),
  says: (finding, names) => {
    const off = awayWords(
      Math.abs(finding.measured),
      names,
      finding.measured < 0 ? 'outside' : 'inside',
      'right at it',
    );
    return `${off}; ${edgeLimit(finding, names)}`;
  },
});

/** What is allowed for the drawn line is taken off the limit, which may so come to lie below 0: both are told apart. */
function edgeLimit(finding: Finding, names: ReaderNames): string {
  const { tolerance } = finding.detail;
  if (typeof tolerance !== 'number') return finding.limit === 0 ? 'nothing may lie outside' : limit(finding, names);
  const asked = finding.limit + tolerance;
  const said = asked <= 0 ? 'nothing may lie outside' : `the limit is ${names.length(asked)}`;
  return `${said}, with ${names.length(tolerance)} allowed for the drawn line`;
}

const onFeature = (title: string, what: string, may: string): Wording => ({
  title,
  who: (finding, names) => `${what} ${hole(finding, 0, names)}`,
  does: (finding, names) => `${finding.measured < 0 ? 'lies on' : 'lies close to'} ${feature(finding, names)}`,
  says: (finding, names) =>
    finding.measured < 0
      ? `it may not be ${may}`
      : `${names.length(finding.measured)} away, and ${names.length(finding.limit)} are to be kept; it may not be ${may}`,
});

const others = (finding: Finding): string => {
  const count = finding.detail.others;
  return typeof count === 'number' ? `; ${count} more of its kind nearer than the limit` : '';
};

/** What lies too close between a hole and its site. */
export const SITE_WORDS = {
  'edge-line': edge('Line of play near the boundary', 'the line of play of'),
  'edge-landing': edge('Landing area near the boundary', 'the landing area of'),
  'edge-green': edge('Green near the boundary', 'green'),
  'edge-tee': edge('Tee near the boundary', 'tee'),
  'public-beside-line': {
    title: 'Public ground beside a line of play',
    who: (finding, names) => feature(finding, names),
    does: (finding, names) => {
      const lies = detail(finding, 'lies') === 'over' ? 'is crossed by' : 'lies close to';
      return `${lies} the line of play of ${hole(finding, 0, names)}`;
    },
    says: (finding, names) =>
      `${awayWords(finding.measured, names, 'away', 'no distance between them')}; ${limitThere(finding, names)}${others(finding)}`,
  },
  'public-in-fan': {
    title: 'Public ground in a shot fan',
    who: (finding, names) => feature(finding, names),
    does: (finding, names) => `lies in the shot fan of ${hole(finding, 0, names)}`,
    says: (finding, names) =>
      `${offLine(finding, names)} of the ${detail(finding, 'shot')}, ${detailLength(finding, 'ahead', names)} ahead; ${limit(finding, names)}${others(finding)}`,
  },
  'in-range-fan': {
    title: "Hole in the practice range's fan",
    who: (finding, names) => `the ${detail(finding, 'part')} of ${hole(finding, 0, names)}`,
    does: (finding, names) => `lies in the fan of ${feature(finding, names)}`,
    says: rangeSays,
  },
  'range-and-public': {
    title: "Public ground in the practice range's fan",
    who: (finding, names) => feature(finding, names, 1),
    does: (finding, names) => `lies in the fan of ${feature(finding, names)}`,
    says: rangeSays,
  },
  'carry-over-feature': {
    title: 'Line of play over ground that may not be carried',
    who: (finding, names) => `the line of play of ${hole(finding, 0, names)}`,
    does: (finding, names) => `${finding.measured <= 0 ? 'crosses' : 'comes close to'} ${feature(finding, names)}`,
    says: (finding, names) =>
      finding.measured <= 0
        ? `${finding.measured < 0 ? `for ${names.length(-finding.measured)}; ` : ''}it may not be carried over`
        : `${names.length(finding.measured)} away, and ${names.length(finding.limit)} are to be kept`,
  },
  'landing-on-feature': onFeature('Landing area on ground that may not be mown', 'the landing area of', 'mown'),
  'tee-on-feature': onFeature('Tee on ground that may not be built on', 'tee', 'built on'),
  'green-on-feature': onFeature('Green on ground that may not be built on', 'green', 'built on'),
} as const satisfies Readonly<Record<string, Wording>>;

function rangeSays(finding: Finding, names: ReaderNames): string {
  const ahead = detailLength(finding, 'ahead', names);
  if (finding.measured === 0) return `straight out from the stands, ${ahead} away`;
  return `${names.length(finding.measured)} aside of the stands' own strip, ${ahead} out; the fan reaches ${names.length(finding.limit)} there`;
}
