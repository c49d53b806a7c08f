import { grown } from '@loopwright/geometry';
import {
  type Feature,
  type FeatureKind,
  type HoleId,
  type SettingKey,
  type SitePoint,
  toMillimetre,
} from '@loopwright/model';
import type { FeatureIndex } from '../feature-index.ts';
import type { Finding, Severity } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import type { Closest } from './closest.ts';
import { distanceToFeature, featureContains, lineBesideFeature, lineOverFeature } from './feature-distance.ts';
import type { HoleReach } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import { checkPublicGround, isPublic } from './public-ground.ts';

/** What stands there can be taken out, or is part of the course: never more than a `mention`. */
const SOFT: ReadonlySet<FeatureKind> = new Set([
  'trees',
  'bunker',
  'fairway',
  'course path',
  'ground unit',
  'landmark',
  'other',
]);

/** Somebody may be there. */
const PEOPLE: ReadonlySet<FeatureKind> = new Set(['building', 'neighbour', 'utility', 'range']);

/**
 * A hole against the site's features, by what each allows and the buffer kept around it; roads, public paths and
 * neighbours by distances of their own.
 *
 * Carry: the line of play may not cross. Mow: no landing area. Build: no tee and no green.
 * Inside is a `stop`, within the buffer a `look`; where water lies, or trees and parts of the course stand, less.
 * Measured: metres to the feature, below 0 inside; for the line of play, metres over it, below 0.
 *
 * Cost: features near the hole only, by the index.
 */
export function checkHoleFeatures(hole: HoleReach, index: FeatureIndex, limits: ClearanceLimits): readonly Finding[] {
  const { settings } = limits;
  const around = index.near(grown(hole.fanBox, settings['public-look']));
  const findings: Finding[] = [...checkPublicGround(hole, around, limits)];
  const kept = Math.max(settings['feature-carry'], settings['feature-mow'], settings['feature-build']);
  const greenRadius = Math.max(hole.green.length, hole.green.width) / 2;
  for (const feature of index.near(grown(hole.box, Math.max(kept, greenRadius)))) {
    if (isPublic(feature) || feature.kind === 'range') continue;
    if (!feature.allows.carry) findings.push(...checkCarry(hole, feature, settings['feature-carry']));
    if (!feature.allows.mow) findings.push(...checkMow(hole, feature, settings['feature-mow']));
    if (!feature.allows.build) findings.push(...checkBuild(hole, feature, settings['feature-build']));
  }
  return findings;
}

function checkCarry(hole: HoleReach, feature: Feature, extra: number): readonly Finding[] {
  const over = lineOverFeature(feature, hole.line);
  // Without a distance to keep, only what lies under the line matters: most features, most of the time.
  const found = over ?? (feature.buffer + extra > 0 ? lineBesideFeature(feature, hole.line) : undefined);
  return found ? featureFinding('carry-over-feature', hole.id, feature, found, 'feature-carry', extra) : [];
}

function checkMow(hole: HoleReach, feature: Feature, extra: number): readonly Finding[] {
  const nearest = nearestOf(feature, hole.landings, feature.buffer + extra);
  return nearest ? featureFinding('landing-on-feature', hole.id, feature, nearest, 'feature-mow', extra) : [];
}

function checkBuild(hole: HoleReach, feature: Feature, extra: number): readonly Finding[] {
  const limit = feature.buffer + extra;
  const tee = nearestOf(feature, hole.tees, limit);
  const radius = SOFT.has(feature.kind) ? 0 : Math.min(hole.green.length, hole.green.width) / 2;
  const centre = nearestOf(feature, [hole.green.centre], limit + radius);
  const green = centre && { ...centre, distance: centre.distance - radius };
  return [
    ...(tee ? featureFinding('tee-on-feature', hole.id, feature, tee, 'feature-build', extra) : []),
    ...(green ? featureFinding('green-on-feature', hole.id, feature, green, 'feature-build', extra) : []),
  ];
}

/** The nearest of some places, as far as it may matter: with nothing to keep, only places inside do. */
function nearestOf(feature: Feature, places: readonly SitePoint[], limit: number): Closest | undefined {
  let nearest: Closest | undefined;
  for (const place of places) {
    if (limit <= 0 && !featureContains(feature, place)) continue;
    const closest = distanceToFeature(feature, place);
    if (!nearest || closest.distance < nearest.distance) nearest = closest;
  }
  return nearest;
}

function featureFinding(
  code: FindingCode,
  hole: HoleId,
  feature: Feature,
  closest: Closest,
  setting: SettingKey,
  extra: number,
): readonly Finding[] {
  const limit = feature.buffer + extra;
  const measured = toMillimetre(closest.distance);
  if (measured > 0 ? measured >= limit : measured === 0 && feature.geometry.type === 'area') return [];
  const severity = severityOf(feature.kind, measured <= 0);
  const finding = clearanceFinding({
    code,
    holes: [hole],
    features: [feature.id],
    measured,
    tier: { severity, limit, setting },
    place: betweenPlaces(closest.first, closest.second),
    detail: { kind: feature.kind },
  });
  return [{ ...finding, safety: PEOPLE.has(feature.kind) }];
}

function severityOf(kind: FeatureKind, isInside: boolean): Severity {
  if (SOFT.has(kind)) return 'mention';
  return isInside && kind !== 'water' ? 'stop' : 'look';
}
