import type { SitePoint } from '@loopwright/model';
import type { Severity } from '../figures.ts';
import { type BruteFan, type Laid, seenFrom } from './laid.ts';
import { apart, crossings, nearest, STEP } from './lines.ts';

/** For tests: what a measure may be called, when it may be off by its tolerance either way. */
export interface Reading {
  readonly code: string;
  readonly measured: number;
  readonly atLeast: Severity | undefined;
  readonly atMost: Severity | undefined;
}

type Limits = readonly [stop: number, look: number, mention: number];

/** Reference values, section 15.3. */
const LIMITS = {
  'landing-tee': [40, 60, 75],
  'landing-green': [40, 60, 75],
  'landing-landing': [45, 60, 75],
  'landing-line': [35, 46, 60],
  'green-green': [30, 40, 50],
  'green-tee': [30, 40, 50],
  'green-next-tee': [15, 20, 30],
} as const satisfies Record<string, Limits>;

export const RANK = { stop: 3, look: 2, mention: 1 } as const;
export const rankOf = (severity: Severity | undefined) => (severity === undefined ? 0 : RANK[severity]);

export function severityUnder(measured: number, [stop, look, mention]: Limits): Severity | undefined {
  if (measured < stop) return 'stop';
  if (measured < look) return 'look';
  return measured < mention ? 'mention' : undefined;
}

/** Half of the sampling, and the millimetre that lengths and points are kept to. */
const OFF = { points: 0.005, lines: STEP / 2 + 0.005, angle: 0.01 };

function readingOf(code: keyof typeof LIMITS, measured: number, off: number): Reading {
  const limits = LIMITS[code];
  return {
    code,
    measured,
    atLeast: severityUnder(measured + off, limits),
    atMost: severityUnder(measured - off, limits),
  };
}

const smallest = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

const closest = (from: readonly SitePoint[], to: readonly SitePoint[]) =>
  smallest(from.flatMap((a) => to.map((b) => apart(a, b))));

/** For tests: every measure between two holes, both ways; `next` when the second is played straight after the first. */
export function readPair(first: Laid, second: Laid, relation: 'next' | 'other'): readonly Reading[] {
  const readings = [
    readingOf('landing-landing', closest(first.landings, second.landings), OFF.points),
    readingOf('green-green', apart(first.green, second.green), OFF.points),
  ];
  for (const [a, b] of [
    [first, second],
    [second, first],
  ] as const) {
    const follows = relation === 'next' && a === first;
    readings.push(
      readingOf('landing-tee', closest(a.landings, b.tees), OFF.points),
      readingOf('landing-green', closest(a.landings, [b.green]), OFF.points),
      readingOf('landing-line', smallest(a.landings.map((at) => nearest(at, b.samples).distance)), OFF.lines),
      readingOf(follows ? 'green-next-tee' : 'green-tee', closest([a.green], b.tees), OFF.points),
      ...readFans(a.fans, b, relation),
    );
  }
  if (crossings(first.line, second.line).length > 0)
    readings.push({ code: 'lines-cross', measured: Number.NaN, atLeast: 'stop', atMost: 'stop' });
  return readings.filter(({ atMost }) => atMost !== undefined);
}

function readFans(fans: readonly BruteFan[], other: Laid, relation: 'next' | 'other'): readonly Reading[] {
  return fans.flatMap((fan) => [
    ...other.tees.map((at) => readFan('tee-in-fan', fan, at, relation === 'next' ? severityNext : severityInFan)),
    readFan('green-in-fan', fan, other.green, relation === 'next' ? severityNext : severityInFan),
    ...(relation === 'next' ? [] : other.landings.map((at) => readFan('landing-in-fan', fan, at, severityLanding))),
  ]);
}

type Judge = (angle: number, off: number) => Severity | undefined;

/** Findings page: within 30 m always a stop; the far wide corners count one step less. */
const severityInFan: Judge = (angle, off) => {
  if (off < 30 || (angle <= 10 && off < 40)) return 'stop';
  return angle <= 10 || off < 50 ? 'look' : 'mention';
};

/** Consecutive holes: by the distance to the line of the shot; between the angles at most a look. */
const severityNext: Judge = (angle, off) => {
  const severity = severityUnder(off, [20, 30, 40]);
  return severity === 'stop' && angle > 10 ? 'look' : severity;
};

/** Landing areas, where players see what is coming, are one step less; those of consecutive holes are left out. */
const severityLanding: Judge = (angle, off) => (angle <= 10 && off < 50 ? 'look' : 'mention');

function readFan(code: string, fan: BruteFan, point: SitePoint, judge: Judge): Reading {
  const { angle, off, far } = seenFrom(fan, point);
  // A tee standing on another's tee is seen at no angle at all.
  const angleOff = OFF.angle + (far < 1 ? 360 : 0);
  const at = (sign: 1 | -1) => {
    if (far + sign * OFF.points > fan.reach || angle + sign * angleOff > 15) return undefined;
    return judge(angle + sign * angleOff, off + sign * OFF.points);
  };
  return { code, measured: off, atLeast: at(1), atMost: at(-1) };
}
