import type { Finding } from '../figures.ts';
import {
  apart,
  awayWords,
  detail,
  detailLength,
  hole,
  holes,
  limit,
  limitThere,
  offLine,
  type ReaderNames,
  type Wording,
} from './words.ts';

const inFan = (title: string, what: string): Wording => ({
  title,
  who: (finding, names) => `${what} ${hole(finding, 1, names)}`,
  does: (finding, names) => `lies in the shot fan of ${hole(finding, 0, names)}`,
  says: (finding, names) =>
    `${offLine(finding, names)} of the ${shotOf(finding)}, ${detailLength(finding, 'ahead', names)} ahead; ${limitThere(finding, names)}`,
});

const inCorridor = (title: string, what: string): Wording => ({
  title,
  who: (finding, names) => `${what} ${hole(finding, 1, names)}`,
  does: (finding, names) => `lies in the corridor of ${hole(finding, 0, names)}`,
  says: (finding, names) =>
    `${awayWords(finding.measured, names, 'off its line of play', 'on its line of play')}, ${detailLength(finding, 'ahead', names)} from the tee; the corridor is ${names.length(finding.limit)} to each side there`,
});

function shotOf(finding: Finding): string {
  const shot = detail(finding, 'shot');
  return shot === 'cut corner' ? 'shot over the corner' : shot;
}

const twoPlaces = (title: string, first: string, second: string): Wording => ({
  title,
  who: (finding, names) => `the ${first} of ${hole(finding, 0, names)}`,
  does: (finding, names) => `lies close to the ${second} of ${hole(finding, 1, names)}`,
  says: apart,
});

/** What lies too close between holes. */
export const CLEARANCE_WORDS = {
  'lines-cross': {
    title: 'Lines of play cross',
    who: (finding, names) => `the lines of play of ${holes(finding, names)}`,
    does: () => 'cross',
    says: (finding, names) =>
      `${detailLength(finding, 'aheadFirst', names)} from tee ${hole(finding, 0, names)} and ${detailLength(finding, 'aheadSecond', names)} from tee ${hole(finding, 1, names)}`,
  },
  'holes-alongside': {
    title: 'Holes close alongside',
    who: holes,
    does: (finding) =>
      `run close alongside, played ${detail(finding, 'play') === 'opposed' ? 'towards each other' : 'the same way'}`,
    says: (finding, names) =>
      `${names.length(finding.measured)} between their lines for ${detailLength(finding, 'stretch', names)}; ${limit(finding, names)}`,
  },
  'landing-tee': twoPlaces('Landing area near a tee', 'landing area', 'tee'),
  'landing-green': twoPlaces('Landing area near a green', 'landing area', 'green'),
  'landing-landing': {
    title: 'Landing areas close together',
    who: (finding, names) => `the landing areas of ${holes(finding, names)}`,
    does: () => 'lie close together',
    says: apart,
  },
  'landing-line': twoPlaces('Landing area near a line of play', 'landing area', 'line of play'),
  'green-green': {
    title: 'Greens close together',
    who: (finding, names) => `greens ${holes(finding, names)}`,
    does: () => 'lie close together',
    says: (finding, names) => `${names.length(finding.measured)} from centre to centre; ${limit(finding, names)}`,
  },
  'green-tee': {
    title: 'Green near a tee that is not the next',
    who: (finding, names) => `tee ${hole(finding, 1, names)}`,
    does: (finding, names) => `lies close to green ${hole(finding, 0, names)}`,
    says: apart,
  },
  'green-next-tee': {
    title: 'Next tee very near the green',
    who: (finding, names) => `tee ${hole(finding, 1, names)}`,
    does: (finding, names) => `lies very close to green ${hole(finding, 0, names)}, which is played before it`,
    says: apart,
  },
  'tee-in-fan': inFan('Tee in a shot fan', 'tee'),
  'green-in-fan': inFan('Green in a shot fan', 'green'),
  'landing-in-fan': inFan('Landing area in a shot fan', 'the landing area of'),
  'landing-in-corridor': inCorridor('Landing area in a corridor', 'the landing area of'),
  'tee-in-corridor': inCorridor('Tee in a corridor', 'tee'),
  'green-in-corridor': inCorridor('Green in a corridor', 'green'),
  'walk-landing': {
    title: 'Walk past a landing area',
    who: pastWalk,
    does: (finding, names) => `passes close to the landing area of ${hole(finding, 0, names)}`,
    says: apart,
  },
  'walk-in-fan': {
    title: 'Walk inside a shot fan',
    who: pastWalk,
    does: (finding, names) => `runs inside the shot fan of ${hole(finding, 0, names)}`,
    says: (finding, names) => `for ${names.length(finding.measured)}`,
  },
} as const satisfies Readonly<Record<string, Wording>>;

/** A walk past a hole: the hole comes first in the finding, then the walk's ends. */
function pastWalk(finding: Finding, names: ReaderNames): string {
  const ends = finding.holes.slice(1).map((id) => names.number(id));
  return ends.length === 2 ? `walk ${ends.join(' → ')}` : `the walk between the base and ${ends.join('')}`;
}
