import { type SettingKey, type SitePoint, toMillimetre } from '@loopwright/model';
import { corridorHalfWidthAt } from '../card/corridor.ts';
import type { Finding, Severity } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { clearanceFinding } from './clearance-finding.ts';
import { type HoleReach, states } from './hole-reach.ts';
import type { PairRelation } from './pair-relation.ts';

/**
 * Another hole's landing areas, tees and green inside a hole's tapered corridor, from tee to green.
 *
 * Measured: metres from the line of play; limit: the corridor's half-width there. A landing area inside is a `look`,
 * the rest a `mention`; corridors that merely overlap are never flagged. The next tee and the last green
 * lie beside the corridor's ends by their nature and are left to the checks made for them.
 *
 * Source: half-widths of one published ordinance (settings); severities calibrated on 31 mapped courses.
 */
export function checkInCorridor(from: HoleReach, to: HoleReach, relation: PairRelation): readonly Finding[] {
  if (states('shares fairway with', from, to) || states('crosses on purpose', from, to)) return [];
  const findings: Finding[] = [];
  add(findings, 'landing-in-corridor', 'look', from, to, to.landings);
  if (relation === 'next') return findings;
  add(findings, 'tee-in-corridor', 'mention', from, to, to.tees);
  if (!states('shares its green with', from, to)) {
    add(findings, 'green-in-corridor', 'mention', from, to, [to.green.centre]);
  }
  return findings;
}

interface Inside {
  readonly place: SitePoint;
  readonly aside: number;
  readonly halfWidth: number;
  readonly along: number;
  readonly foot: SitePoint;
}

function add(
  findings: Finding[],
  code: FindingCode,
  severity: Severity,
  from: HoleReach,
  to: HoleReach,
  places: readonly SitePoint[],
): void {
  let deepest: Inside | undefined;
  for (const place of places) {
    const inside = insideCorridor(from, place);
    if (inside && (!deepest || inside.aside - inside.halfWidth < deepest.aside - deepest.halfWidth)) deepest = inside;
  }
  if (!deepest) return;
  const { place, aside, halfWidth, along, foot } = deepest;
  findings.push(
    clearanceFinding({
      code,
      holes: [from.id, to.id],
      measured: aside,
      tier: { severity, limit: halfWidth, setting: settingAt(from, along) },
      place: { type: 'line', points: [foot, place] },
      detail: { ahead: toMillimetre(along) },
    }),
  );
}

function insideCorridor({ legs, figures }: HoleReach, place: SitePoint): Inside | undefined {
  let best: Inside | undefined;
  legs.forEach((leg, i) => {
    const level = (place.x - leg.a.x) * leg.towards.x + (place.y - leg.a.y) * leg.towards.y;
    // Behind the tee and past the green the corridor ends; outside a bend it goes round the turn.
    if ((i === 0 && level < 0) || (i === legs.length - 1 && level > leg.length)) return;
    const on = Math.min(leg.length, Math.max(0, level));
    const x = leg.a.x + leg.towards.x * on;
    const y = leg.a.y + leg.towards.y * on;
    const aside = toMillimetre(Math.sqrt((place.x - x) ** 2 + (place.y - y) ** 2));
    const along = leg.before + on;
    const halfWidth = toMillimetre(corridorHalfWidthAt(figures.corridorStations, along));
    if (aside < halfWidth && (!best || aside < best.aside)) best = { place, aside, halfWidth, along, foot: { x, y } };
  });
  return best;
}

/** The half-width that weighs most there: that of the nearest station. */
function settingAt({ figures, length }: HoleReach, along: number): SettingKey {
  const stations = figures.corridorStations;
  const first = stations[1]?.along ?? length;
  if (along < first / 2) return 'corridor-tee';
  const last = stations[stations.length - 2]?.along ?? 0;
  return along > (last + length) / 2 ? 'corridor-green' : 'corridor-landing';
}
