import type { Finding } from '../figures.ts';
import { detail, holes, inRound, limit, type ReaderNames, type Wording } from './words.ts';

const within = (finding: Finding, names: ReaderNames): string => {
  const angle = finding.detail.angle;
  return typeof angle === 'number' ? ` within ${names.angle(angle)}` : '';
};

/** Which way the holes run. */
export const DIRECTION_WORDS = {
  'directions-used': {
    title: 'Few playing directions',
    who: (finding) => `the holes ${inRound(finding)}`,
    does: () => 'use few directions',
    says: (finding) => `${finding.measured} of the eight; ${finding.limit} or fewer are few`,
  },
  'runs-one-way': {
    title: 'Three in a row one way',
    who: holes,
    does: (finding, names) => `run one way${within(finding, names)}, three in a row`,
    says: (finding) =>
      `${finding.measured === 1 ? 'one such run' : `${finding.measured} such runs`} ${inRound(finding)}`,
  },
  'three-one-way': {
    title: 'Three in a row one way',
    who: holes,
    does: () => 'run one way',
    says: (finding, names) => `all three${within(finding, names)} of each other`,
  },
  'next-one-way': {
    title: 'Consecutive holes one way',
    who: (finding) => `many holes ${inRound(finding)}`,
    does: () => 'run the same way as the one before',
    says: (finding, names) => `${finding.measured} pairs${within(finding, names)}; more than ${finding.limit} are many`,
  },
  'side-by-side-one-way': {
    title: 'Three side by side, one way',
    who: holes,
    does: () => 'lie side by side and are played the same way',
    says: (finding, names) => {
      const apart = finding.detail.apart;
      return typeof apart === 'number' ? `each within ${names.length(apart)} of the next` : 'each near the next';
    },
  },
  'par-threes-one-way': {
    title: 'Par 3s one way',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: (finding, names) => `run one way${within(finding, names)}`,
    says: (finding) => `${finding.measured} pairs; ${finding.limit} or more are many`,
  },
  'par-threes-alike': {
    title: 'Par 3s alike',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: () => 'are alike',
    says: (finding, names) =>
      `${names.length(finding.measured)} between their lengths, ${names.angle(Number(detail(finding, 'apartDegrees')))} between their directions; ${limit(finding, names)}`,
  },
} as const satisfies Readonly<Record<string, Wording>>;
