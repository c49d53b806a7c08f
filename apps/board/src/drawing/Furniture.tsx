import type { LengthUnit } from '@loopwright/model';
import { memo } from 'react';
import { toScaleBar } from './scale-bar.ts';

interface FurnitureProps {
  readonly scale: number;
  readonly units: LengthUnit;
  /** True north, radians clockwise from up. */
  readonly north: number;
}

/** Room for the scale bar, in pixels. */
const LONGEST_BAR = 150;

/** North arrow and scale bar, as on any sheet. */
export const Furniture = memo(function Furniture({ scale, units, north }: FurnitureProps) {
  const bar = toScaleBar(scale, units, LONGEST_BAR);
  return (
    <>
      <svg className="plan__north" viewBox="-20 -20 40 40" role="img" aria-label="North">
        <circle r="19" className="plan__north-ground" />
        <g transform={`rotate(${(north * 180) / Math.PI})`}>
          <path d="M0 -13 L5 4 L0 1 L-5 4 Z" />
          <text y="14" textAnchor="middle">
            N
          </text>
        </g>
      </svg>
      <div className="plan__scale" role="img" aria-label={`Scale bar: ${bar.label}`}>
        <svg width={bar.pixels + 2} height="9" aria-hidden="true">
          <path d={`M1 0 V9 M1 4.5 H${bar.pixels + 1} M${bar.pixels / 2 + 1} 2 V7 M${bar.pixels + 1} 0 V9`} />
        </svg>
        <span>{bar.label}</span>
      </div>
    </>
  );
});
