import { ringArea } from '@loopwright/geometry';
import type { Boundary, LengthUnit, Ring } from '@loopwright/model';
import { areaWords } from '../../../reading/areas.ts';
import { lengthWords } from '../../../reading/lengths.ts';
import { perimeterOf } from '../../../reading/sketch-words.ts';

const sum = (rings: readonly Ring[], of: (ring: Ring) => number) => rings.reduce((total, ring) => total + of(ring), 0);
const areaOf = (rings: readonly Ring[]) => sum(rings, (ring) => Math.abs(ringArea(ring)));

/** The land that is the site's own: without other people's inside. */
export function ownArea({ outlines, inner }: Boundary, units: LengthUnit): string {
  return areaWords(Math.max(0, areaOf(outlines) - areaOf(inner)), units);
}

/** '84.20 ha, 3,812 m around; without 1.20 ha that is someone else’s.' */
export function sizeWords(boundary: Boundary, units: LengthUnit): string {
  const { outlines, inner } = boundary;
  const around = lengthWords(sum(outlines, perimeterOf), units);
  const others = inner.length > 0 ? `; without ${areaWords(areaOf(inner), units)} that is someone else’s` : '';
  return `${ownArea(boundary, units)}, ${around} around${others}.`;
}
