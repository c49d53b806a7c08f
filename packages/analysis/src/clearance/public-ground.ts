import { closestOnPolyline, pointAlong } from '@loopwright/geometry';
import { type Feature, type FeatureKind, type SettingKey, toMillimetre } from '@loopwright/model';
import { corridorHalfWidthAt } from '../card/corridor.ts';
import type { CorridorStation, Finding } from '../figures.ts';
import type { Tier } from '../findings/tier.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import type { Closest } from './closest.ts';
import { distanceToFeature, lineBesideFeature, lineOverFeature } from './feature-distance.ts';
import type { HoleReach } from './hole-reach.ts';
import { isWorse } from './in-fan.ts';
import type { ClearanceLimits } from './limits.ts';
import { publicInFan } from './public-in-fan.ts';

/** Metres between the places of the line of play where the ordinance's distance is tried. */
const STEP = 10;

const PUBLIC: ReadonlySet<FeatureKind> = new Set(['public road', 'public path', 'neighbour']);

/** Whether people who are not playing may be there. */
export function isPublic(feature: Feature): boolean {
  return PUBLIC.has(feature.kind);
}

/**
 * A hole against roads, public paths and neighbours.
 *
 * A `stop` is nearer to the line of play than the ordinance's distance (tee, landing area, green, even between), or
 * that near to the line of a shot straight on past the turn, inside the wider angle; a `look` is nearer than the
 * practised half corridor. The feature's own buffer comes on top. Of several of one kind, ways are often mapped in
 * pieces, the worst is told and the rest are counted with it.
 *
 * Source: settings `public-…`. One ordinance, not a standard: local codes decide.
 */
export function checkPublicGround(
  hole: HoleReach,
  features: readonly Feature[],
  limits: ClearanceLimits,
): readonly Finding[] {
  const worst = new Map<FeatureKind, { readonly finding: Finding; readonly others: number }>();
  for (const feature of features) {
    const finding = isPublic(feature) ? publicFinding(hole, feature, limits) : undefined;
    if (!finding) continue;
    const known = worst.get(feature.kind);
    const others = known ? known.others + 1 : 0;
    worst.set(feature.kind, { finding: known ? worseOf(known.finding, finding) : finding, others });
  }
  return [...worst.values()].map(({ finding, others }) =>
    others > 0 ? { ...finding, detail: { ...finding.detail, others } } : finding,
  );
}

function publicFinding(hole: HoleReach, feature: Feature, limits: ClearanceLimits): Finding | undefined {
  const beside = besideLine(hole, feature, limits);
  const straightOn = publicInFan(hole, feature, limits);
  if (beside && straightOn) return isWorse(straightOn.severity, beside.severity) ? straightOn : beside;
  return beside ?? straightOn;
}

function besideLine(hole: HoleReach, feature: Feature, limits: ClearanceLimits): Finding | undefined {
  const stations = ordinanceStations(hole, limits);
  const over = lineOverFeature(feature, hole.line);
  if (over) {
    const { along } = closestOnPolyline(over.first, hole.line);
    const limit = toMillimetre(corridorHalfWidthAt(stations, along));
    return beside(hole, feature, over, 0, { severity: 'stop', limit, setting: settingAt(stations, along) }, 'over');
  }
  const look = limits.settings['public-look'];
  const nearest = lineBesideFeature(feature, hole.line);
  // The nearest place of all is beyond every limit: no place along the line can be within one.
  const widest = stations.reduce((most, { halfWidth }) => Math.max(most, halfWidth), look);
  if (!nearest || nearest.distance - feature.buffer >= widest) return undefined;
  const worst = worstAlong(hole, feature, stations);
  const measured = toMillimetre(worst.distance - feature.buffer);
  const limit = toMillimetre(corridorHalfWidthAt(stations, worst.along));
  if (measured < limit) {
    const tier: Tier = { severity: 'stop', limit, setting: settingAt(stations, worst.along) };
    return beside(hole, feature, worst, measured, tier, 'beside');
  }
  const apart = toMillimetre(nearest.distance - feature.buffer);
  if (apart >= look) return undefined;
  return beside(hole, feature, nearest, apart, { severity: 'look', limit: look, setting: 'public-look' }, 'beside');
}

function beside(
  hole: HoleReach,
  feature: Feature,
  { first, second }: Closest,
  measured: number,
  tier: Tier,
  lies: 'over' | 'beside',
): Finding {
  return clearanceFinding({
    code: 'public-beside-line',
    holes: [hole.id],
    features: [feature.id],
    measured,
    tier,
    place: betweenPlaces(first, second),
    detail: { kind: feature.kind, lies },
  });
}

/** The ordinance's distance at the tee, the landing areas and the green. */
function ordinanceStations({ figures, length }: HoleReach, { settings }: ClearanceLimits): readonly CorridorStation[] {
  return figures.corridorStations.map(({ along }) => ({
    along,
    halfWidth:
      along <= 0
        ? settings['public-tee-stop']
        : along >= length
          ? settings['public-green-stop']
          : settings['public-landing-stop'],
  }));
}

function worstAlong(
  hole: HoleReach,
  feature: Feature,
  stations: readonly CorridorStation[],
): Closest & { readonly along: number } {
  const steps = Math.max(1, Math.ceil(hole.length / STEP));
  let worst: (Closest & { readonly along: number; readonly clear: number }) | undefined;
  for (let i = 0; i <= steps; i++) {
    const along = (hole.length * i) / steps;
    const near = distanceToFeature(feature, pointAlong(hole.line, along));
    const clear = near.distance - corridorHalfWidthAt(stations, along);
    if (!worst || clear < worst.clear) worst = { ...near, along, clear };
  }
  if (!worst) throw new RangeError('worstAlong: a hole needs a line of play');
  return worst;
}

function settingAt(stations: readonly CorridorStation[], along: number): SettingKey {
  const length = stations[stations.length - 1]?.along ?? 0;
  const first = stations[1]?.along ?? length;
  const last = stations[stations.length - 2]?.along ?? 0;
  if (along < first / 2) return 'public-tee-stop';
  return along > (last + length) / 2 ? 'public-green-stop' : 'public-landing-stop';
}

function worseOf(a: Finding, b: Finding): Finding {
  if (a.severity !== b.severity) return isWorse(b.severity, a.severity) ? b : a;
  if (a.measured !== b.measured) return b.measured < a.measured ? b : a;
  return b.key < a.key ? b : a;
}
