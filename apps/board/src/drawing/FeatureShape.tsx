import type { Context } from 'konva/lib/Context';
import type { Shape as KonvaShape } from 'konva/lib/Shape';
import { memo } from 'react';
import type { FeatureManner, FeatureView } from './feature-view.ts';
import { INKS } from './inks.ts';
import { Group, Line, Path, Shape } from './konva-shapes.ts';
import { TILE_SHARPNESS } from './patterns.ts';
import { toSheet } from './site-transform.ts';

interface Pen {
  readonly stroke: string;
  readonly width: number;
  readonly dash?: number[];
  readonly fill?: string;
}

const PENS: Readonly<Record<FeatureManner, Pen>> = {
  water: { stroke: INKS.waterLine, width: 1.5 },
  wetland: { stroke: INKS.waterLine, width: 1, dash: [4, 4] },
  trees: { stroke: INKS.treesLine, width: 1, dash: [2, 3] },
  'kept out': { stroke: INKS.softInk, width: 1, dash: [8, 3] },
  sand: { stroke: INKS.sandLine, width: 1 },
  mown: { stroke: 'rgba(47, 107, 79, 0.35)', width: 1 },
  building: { stroke: INKS.ink, width: 1, fill: '#8A8578' },
  road: { stroke: '#FFFDF6', width: 3 },
  path: { stroke: INKS.softInk, width: 1.2, dash: [6, 3] },
  line: { stroke: INKS.softInk, width: 1.2, dash: [12, 3, 2, 3] },
  landmark: { stroke: INKS.ink, width: 1.2, fill: INKS.sheet },
  plain: { stroke: INKS.softInk, width: 1, dash: [3, 3] },
};

const STAR = 'M0 -8 L2.2 -2.5 L8 -2.5 L3.4 1.2 L5 7 L0 3.6 L-5 7 L-3.4 1.2 L-8 -2.5 L-2.2 -2.5 Z';

interface FeatureShapeProps {
  readonly view: FeatureView;
  readonly scale: number;
  readonly tile: HTMLCanvasElement | undefined;
}

/** One feature of the site, told apart by hatch and line. */
export const FeatureShape = memo(function FeatureShape({ view, scale, tile }: FeatureShapeProps) {
  const pen = PENS[view.manner];
  const strokes = {
    stroke: pen.stroke,
    strokeWidth: pen.width,
    strokeScaleEnabled: false,
    perfectDrawEnabled: false,
    lineJoin: 'round' as const,
    ...(pen.dash ? { dash: pen.dash } : {}),
  };
  if (view.line) {
    return (
      <Group>
        {view.manner === 'road' && (
          <Line points={[...view.line]} {...strokes} stroke="#A79B80" strokeWidth={5} lineCap="round" />
        )}
        <Line points={[...view.line]} {...strokes} lineCap={view.manner === 'road' ? 'round' : 'butt'} />
      </Group>
    );
  }
  if (view.at) {
    const [x, y] = toSheet(view.at);
    return <Path data={STAR} x={x} y={y} scaleX={1 / scale} scaleY={1 / scale} {...strokes} fill={INKS.sheet} />;
  }
  return <Shape {...strokes} {...fillOf(pen)} fillRule="evenodd" sceneFunc={areaPen(view.areas, tile, scale)} />;
});

const fillOf = (pen: Pen) => (pen.fill ? { fill: pen.fill } : {});

/** Draws outlines as one shape, so that a hole in an area stays open; the hatch keeps its size on the screen. */
function areaPen(areas: FeatureView['areas'], tile: HTMLCanvasElement | undefined, scale: number) {
  return (context: Context, shape: KonvaShape) => {
    context.beginPath();
    for (const outline of areas) {
      for (let i = 0; i + 1 < outline.length; i += 2) {
        const [x, y] = [outline[i] ?? 0, outline[i + 1] ?? 0];
        if (i === 0) context.moveTo(x, y);
        else context.lineTo(x, y);
      }
      context.closePath();
    }
    const pattern = tile && context._context.createPattern(tile, 'repeat');
    if (pattern) {
      pattern.setTransform(new DOMMatrix().scale(1 / (TILE_SHARPNESS * scale)));
      context._context.fillStyle = pattern;
      context._context.fill('evenodd');
    }
    context.fillStrokeShape(shape);
  };
}
