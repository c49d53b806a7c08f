import type { RoundFigures } from '@loopwright/analysis';
import type { LengthUnit } from '@loopwright/model';
import { sectorLetters, sectorWord } from '../../reading/directions.ts';
import { lengthFigure, unitSymbol } from '../../reading/lengths.ts';

/** One of the eight directions of the rose. */
export interface Petal {
  readonly key: string;
  readonly letters: string;
  readonly holes: string;
  readonly length: string;
  readonly said: string;
  /** The petal as an SVG path about the middle, north up, radius 1 for the longest. */
  readonly path: string;
  readonly labelAt: { readonly x: number; readonly y: number };
}

/** Half of a petal's width, degrees: a little air between neighbours. */
const HALF_PETAL = 19;
const LABEL_RADIUS = 1.18;

/**
 * How much is played in each direction. A petal's area grows with the length played, so its radius with the square root:
 * twice the play looks like twice as much.
 */
export function toPetals(rose: RoundFigures['rose'], units: LengthUnit): readonly Petal[] {
  const longest = Math.max(1, ...rose.map(({ length }) => length));
  return rose.map(({ holes, length }, index) => ({
    key: sectorLetters(index),
    letters: sectorLetters(index),
    holes: String(holes),
    length: lengthFigure(length, units),
    said: `${sectorWord(index)}: ${holes} ${holes === 1 ? 'hole' : 'holes'}, ${lengthFigure(length, units)} ${unitSymbol(units)}`,
    path: petalPath(index * 45, Math.sqrt(length / longest)),
    labelAt: onCircle(index * 45, LABEL_RADIUS),
  }));
}

const onCircle = (degrees: number, radius: number) => {
  const angle = (degrees * Math.PI) / 180;
  return { x: rounded(radius * Math.sin(angle)), y: rounded(-radius * Math.cos(angle)) };
};

const rounded = (value: number) => Math.round(value * 1000) / 1000;

function petalPath(towards: number, radius: number): string {
  if (radius === 0) return '';
  const [left, right] = [onCircle(towards - HALF_PETAL, radius), onCircle(towards + HALF_PETAL, radius)];
  return `M0 0L${left.x} ${left.y}A${rounded(radius)} ${rounded(radius)} 0 0 1 ${right.x} ${right.y}Z`;
}
