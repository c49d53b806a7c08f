import { bearingOf, distanceBetween, minus } from '@loopwright/geometry';
import type { LengthUnit, ModelPlayer, Settings, SitePoint } from '@loopwright/model';
import { type Label, placeLabels } from '../../drawing/label-placement.ts';
import { toCanvas } from '../../drawing/site-transform.ts';
import { bearingWords } from '../../reading/directions.ts';
import { lengthWords } from '../../reading/lengths.ts';
import type { InstrumentPicture, Snapped } from '../instrument.ts';
import { type ReachArc, reachArcs } from './reach-arcs.ts';
import { clubWords } from './reach-words.ts';

export interface ReachShown {
  /** From the first point on: the last is where the arcs are drawn from. */
  readonly path: readonly SitePoint[];
  readonly aim: Snapped | undefined;
  readonly players: readonly ModelPlayer[];
  readonly clubs: readonly string[];
  readonly settings: Settings;
  readonly units: LengthUnit;
  /** Pixels a metre takes. */
  readonly scale: number;
}

/** Degrees of ground each player's clubs are drawn over, side by side about the aim; of one player alone. */
const BAND = { ofSeveral: 28, alone: 50 };
/** Degrees between two corners of an arc. */
const STEP = 2;
/** Shares of a band where a label may stand, best first. */
const LABEL_SHARES = [0.06, 0.5, 0.94, 0.28, 0.72];
/** Pixels: roughly a letter, half a line, and how far the words stand off their place. */
const LETTER = 6.6;
const HALF_LINE = 9;
const BESIDE = { x: 8, y: -10 };

/** What is drawn of a reach: arcs about its point, the line of aim, and what is read off at the pointer. */
export function reachPicture(shown: ReachShown): InstrumentPicture {
  const { path, aim, players, clubs, settings } = shown;
  const origin = path.at(-1);
  if (!origin) return {};
  const from = path.length > 1 ? 'turn' : 'tee';
  const arcs = reachArcs(players, clubs, settings, from);
  const drawn = arcs.map((arc) => ({ arc, points: arcPoints(origin, arc.distance, bandOf(shown, arc.player)) }));
  return {
    rings: longestOf(arcs).map(({ distance }) => ({ centre: origin, radius: distance, manner: 'guide' })),
    lines: [
      ...drawn.map(({ points }) => ({ points, manner: 'measure' as const })),
      ...(aim ? [{ points: [...path, aim.at], manner: 'new' as const }] : [{ points: path, manner: 'new' as const }]),
    ],
    dots: path.map((at, index) => ({ at, manner: index === path.length - 1 ? ('new' as const) : ('grip' as const) })),
    words: labelsOf(drawn, shown),
    atPointer: aim ? [...aimWords(origin, aim.at, from, shown), ...(aim.because ? [aim.because] : [])] : [],
  };
}

function aimWords(origin: SitePoint, at: SitePoint, from: 'tee' | 'turn', shown: ReachShown): readonly string[] {
  const { players, settings, units } = shown;
  const distance = distanceBetween(origin, at);
  return [
    `${lengthWords(distance, units)}, bearing ${bearingWords(bearingOf(minus(at, origin)))}`,
    ...players.map((player) => clubWords(distance, player, settings, from, units)),
  ];
}

/** The longest arc of each player. */
function longestOf(arcs: readonly ReachArc[]): readonly ReachArc[] {
  return arcs.filter(({ player }, index) => arcs.findIndex((arc) => arc.player === player) === index);
}

/** Where a player's clubs are drawn: bearings in radians, from the left of the aim to the right. */
function bandOf({ path, aim, players }: ReachShown, player: ModelPlayer): readonly [number, number] {
  const origin = path.at(-1);
  const towards = origin && aim ? bearingOf(minus(aim.at, origin)) : 0;
  const width = players.length > 1 ? BAND.ofSeveral : BAND.alone;
  const left = (players.indexOf(player) - players.length / 2) * width;
  return [towards + (left * Math.PI) / 180, towards + ((left + width) * Math.PI) / 180];
}

const onArc = (centre: SitePoint, radius: number, bearing: number): SitePoint => ({
  x: centre.x + radius * Math.sin(bearing),
  y: centre.y + radius * Math.cos(bearing),
});

function arcPoints(centre: SitePoint, radius: number, [left, right]: readonly [number, number]): readonly SitePoint[] {
  const steps = Math.ceil(((right - left) * 180) / Math.PI / STEP);
  return Array.from({ length: steps + 1 }, (_, step) => onArc(centre, radius, left + ((right - left) * step) / steps));
}

interface DrawnArc {
  readonly arc: ReachArc;
  readonly points: readonly SitePoint[];
}

/** Words on the arcs where there is room: each player's longest first, then club by club. The others stay bare. */
function labelsOf(drawn: readonly DrawnArc[], shown: ReachShown): NonNullable<InstrumentPicture['words']> {
  const { units, scale, players } = shown;
  const longest = new Set(longestOf(drawn.map(({ arc }) => arc)));
  const labels = drawn.map(({ arc, points }) => {
    const who = players.length > 1 && longest.has(arc) ? `${arc.player}, ` : '';
    const text = `${who}${arc.club} ${lengthWords(arc.distance, units)}`;
    const spots = LABEL_SHARES.flatMap((share) => points[Math.round(share * (points.length - 1))] ?? []);
    return { ...labelBox(`${arc.player} ${arc.club}`, text, spots, scale), text, spots, first: longest.has(arc) };
  });
  const placed = placeLabels([...labels].sort((a, b) => Number(b.first) - Number(a.first)));
  return labels.flatMap(({ id, text, places, spots }) => {
    const place = placed.get(id);
    const at = place && spots[places.indexOf(place)];
    return at ? [{ at, text }] : [];
  });
}

/** The box of words that stand beside one of their spots, in pixels. */
function labelBox(id: string, text: string, spots: readonly SitePoint[], scale: number): Label {
  const halfWidth = (text.length * LETTER) / 2;
  const places = spots.map((spot) => {
    const { x, y } = toCanvas({ scale, x: 0, y: 0 }, spot);
    return { x: x + BESIDE.x + halfWidth, y: y + BESIDE.y };
  });
  return { id, places, halfWidth: halfWidth + 4, halfHeight: HALF_LINE, when: 'if there is room' };
}
