import { detail, hole, holes, inRound, limit, type Wording } from './words.ts';

/** How one hole follows another. */
export const RHYTHM_WORDS = {
  'par-run': {
    title: 'Long run of one par',
    who: holes,
    does: (finding) => `are all par ${detail(finding, 'par')}`,
    says: (finding) => `${finding.measured} in a row; ${finding.limit} or more are many`,
  },
  'par-threes-in-a-row': {
    title: 'Par 3s in a row',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: () => 'follow each other',
    says: (finding) => `${finding.measured === 1 ? 'once' : `${finding.measured} times`} ${inRound(finding)}`,
  },
  'par-fives-in-a-row': {
    title: 'Par 5s in a row',
    who: (finding, names) => `the par 5s ${holes(finding, names)}`,
    does: () => 'follow each other',
    says: (finding) => `${finding.measured === 1 ? 'once' : `${finding.measured} times`} ${inRound(finding)}`,
  },
  'par-three-early': {
    title: 'Par 3 too early',
    who: (finding, names) => hole(finding, 0, names),
    does: () => 'is a par 3 at the very start, where groups wait for each other',
    says: (finding) => `hole ${finding.measured} ${inRound(finding)}`,
  },
  'par-three-late': {
    title: 'First par 3 late',
    who: (finding, names) => hole(finding, 0, names),
    does: () => 'is the first par 3, and comes late',
    says: (finding) => `hole ${finding.measured} ${inRound(finding)}; the 4th is usual`,
  },
  'par-three-last': {
    title: 'Par 3 last',
    who: (finding, names) => hole(finding, 0, names),
    does: (finding) => `is a par 3 at the end ${inRound(finding).replace('in', 'of')}`,
    says: () => 'few rounds finish so',
  },
  'long-par-three-early': {
    title: 'Long par 3 in the opening holes',
    who: (finding, names) => hole(finding, 0, names),
    does: () => 'is a long par 3 among the opening holes',
    says: (finding, names) => `${names.length(finding.measured)}; ${limit(finding, names)}`,
  },
  'reachable-par-five-early': {
    title: 'Reachable par 5 in the opening holes',
    who: (finding, names) => hole(finding, 0, names),
    does: () => 'is a par 5 that can be reached in two among the opening holes',
    says: (finding, names) =>
      `${names.length(finding.measured)}; up to ${names.length(finding.limit)} it can be reached`,
  },
  'short-holes-close': {
    title: 'Short holes close together',
    who: holes,
    does: (finding) =>
      detail(finding, 'pars') === '3' ? 'are par 3s that come close together' : 'are short and come close together',
    says: (finding) => {
      if (finding.measured === 0) return 'one straight after the other';
      return finding.measured === 1 ? 'one hole between' : `${finding.measured} holes between`;
    },
  },
  'same-club-par-threes': {
    title: 'Same club into par 3s',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: () => 'take the same club',
    says: (finding) => `a ${detail(finding, 'club')} each, on the level`,
  },
  'same-approach': {
    title: 'Same approach again',
    who: holes,
    does: () => 'take the same club into the green',
    says: (finding) => `a ${detail(finding, 'club')} each, ${finding.measured} in a row`,
  },
  'bends-one-way': {
    title: 'Bends to one side',
    who: (finding) => `the bends ${inRound(finding)}`,
    does: (finding) => `go mostly to the ${detail(finding, 'side')}`,
    says: (finding) => `${detail(finding, 'left')} left, ${detail(finding, 'right')} right`,
  },
  'par-three-range': {
    title: 'Par 3s of one length',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: () => 'differ little in length',
    says: (finding, names) => `${names.length(finding.measured)} from shortest to longest; ${limit(finding, names)}`,
  },
  'par-threes-hide-length': {
    title: 'Length that the par 3s hide',
    who: (finding, names) => `the par 3s ${holes(finding, names)}`,
    does: (finding) => `make the card look ${detail(finding, 'way')} than the other holes are`,
    says: (finding, names) => `by ${names.length(finding.measured)} against as many usual par 3s`,
  },
  'loop-par-apart': {
    title: 'Loops differ in par',
    who: (finding) => `the loops ${inRound(finding)}`,
    does: () => 'differ in par',
    says: (finding) => `by ${finding.measured}; more than ${finding.limit} is uncommon`,
  },
  'loop-length-apart': {
    title: 'Loops differ in length',
    who: (finding) => `the loops ${inRound(finding)}`,
    does: () => 'differ in length',
    says: (finding, names) => `by ${names.length(finding.measured)}; ${limit(finding, names)}`,
  },
  'last-to-first': {
    title: 'Finish far from the start',
    who: (finding, names) => `green ${hole(finding, 0, names)}`,
    does: (finding, names) => `ends the round far from tee ${hole(finding, 1, names)}`,
    says: (finding, names) => `${names.length(finding.measured)} straight; ${limit(finding, names)}`,
  },
  'loop-to-first': {
    title: 'Loop ends far from the start',
    who: (finding, names) => `green ${hole(finding, 0, names)}`,
    does: (finding, names) => `ends its loop far from tee ${hole(finding, 1, names)}`,
    says: (finding, names) => `${names.length(finding.measured)} straight; ${limit(finding, names)}`,
  },
  queue: {
    title: 'Queue on a tee',
    who: (finding, names) => `tee ${hole(finding, 0, names)}`,
    does: () => 'gathers a queue',
    says: (finding) =>
      `group ${detail(finding, 'group')} waits about ${Math.round(finding.measured)} min when groups start ${detail(finding, 'interval')} min apart`,
  },
  'weak-place': {
    title: 'Weak hole at the start or finish',
    who: (finding, names) => hole(finding, 0, names),
    does: (finding) => `is judged weak, at the ${detail(finding, 'where')} of its loop`,
    says: () => 'where a round is remembered',
  },
  'weak-together': {
    title: 'Weak holes in a row',
    who: holes,
    does: () => 'are judged weak and follow each other',
    says: (finding) => `${finding.measured} in a row`,
  },
  'few-keepers': {
    title: 'Loop without a keeper',
    who: () => 'a loop',
    does: () => 'has few keepers',
    says: (finding) => (finding.measured === 0 ? 'none among the holes judged so far' : `${finding.measured} so far`),
  },
  'mark-unused': {
    title: 'Site mark unused',
    who: (finding) => `a ${detail(finding, 'verdict')} ${detail(finding, 'mark')}`,
    does: () => 'lies unused',
    says: (finding, names) => {
      const note = detail(finding, 'note');
      return `the nearest that could is ${names.length(finding.measured)} away${note === '' ? '' : ` (${note})`}`;
    },
  },
} as const satisfies Readonly<Record<string, Wording>>;
