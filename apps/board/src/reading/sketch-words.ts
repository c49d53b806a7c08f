import { bearingOf, distanceBetween, eachEdge, minus, polylineLength, ringArea } from '@loopwright/geometry';
import { cardLength, type LengthUnit, type Ring, type SitePoint, type SketchShape } from '@loopwright/model';
import { areaWords } from './areas.ts';
import { bearingWords } from './directions.ts';
import { grouped, lengthWords, unitSymbol } from './lengths.ts';

const TITLES: Readonly<Record<SketchShape['kind'], string>> = {
  stroke: 'Pencil line',
  'measured line': 'Measured line',
  'measured area': 'Measured area',
  ring: 'Clearance ring',
  rod: 'Rod',
};

/** What a sketch is called in a list. */
export function sketchTitle(shape: SketchShape): string {
  return TITLES[shape.kind];
}

/** What is read off a sketch: '412 m', '1.24 ha, 468 m around', '265 + 140 = 405 m'. */
export function sketchValue(shape: SketchShape, units: LengthUnit): string {
  switch (shape.kind) {
    case 'stroke':
      return lengthWords(polylineLength(shape.points), units);
    case 'measured line':
      return lineWords(shape.points, units);
    case 'measured area':
      return `${areaWords(Math.abs(ringArea(shape.ring)), units)}, ${lengthWords(perimeterOf(shape.ring), units)} around`;
    case 'ring':
      return `${lengthWords(shape.radius, units)} from the middle`;
    case 'rod':
      return legSum(legsOf(shape.points), units);
  }
}

/** The way around a ring, in metres. */
export function perimeterOf(ring: Ring): number {
  let sum = 0;
  eachEdge(ring, (a, b) => {
    sum += distanceBetween(a, b);
  });
  return sum;
}

/** The lengths of the legs of a line, in metres. */
export function legsOf(points: readonly SitePoint[]): readonly number[] {
  return points.slice(1).map((point, index) => distanceBetween(points[index] ?? point, point));
}

/** '265 + 140 = 405 m': each leg rounded as it is shown, and their sum as those add up; one leg alone: '265 m'. */
export function legSum(legs: readonly number[], units: LengthUnit): string {
  const shown = legs.map((leg) => cardLength(leg, units));
  const sum = `${grouped(shown.reduce((total, leg) => total + leg, 0))} ${unitSymbol(units)}`;
  return shown.length > 1 ? `${shown.map(grouped).join(' + ')} = ${sum}` : sum;
}

/** A measured line: one leg with its bearing, several by their number and sum. */
function lineWords(points: readonly SitePoint[], units: LengthUnit): string {
  const [first, second] = points;
  if (points.length === 2 && first && second) {
    return `${lengthWords(distanceBetween(first, second), units)}, bearing ${bearingWords(bearingOf(minus(second, first)))}`;
  }
  return `${lengthWords(polylineLength(points), units)} in ${points.length - 1} legs`;
}
