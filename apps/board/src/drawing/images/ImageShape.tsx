import type { ImageLayer } from '@loopwright/model';
import type { Context } from 'konva/lib/Context.js';
import { memo, useCallback, useRef } from 'react';
import { INKS } from '../inks.ts';
import { Line, Shape } from '../konva-shapes.ts';
import { toSheetLine, type View } from '../site-transform.ts';
import { cornersOf } from './corners.ts';
import { paintPieces } from './paint-image.ts';
import { seenPart } from './seen-part.ts';
import { type Level, levelFor, tilesIn } from './tile-grid.ts';
import type { Held, TileStore } from './tile-store.ts';

interface ImageShapeProps {
  readonly layer: ImageLayer;
  readonly levels: readonly Level[];
  readonly tiles: TileStore;
}

/** The look a canvas is drawn with, read off its own transformation: the layer's, and the screen's pixels. */
function lookOf(pen: CanvasRenderingContext2D): View {
  const { a, e, f } = pen.getTransform();
  return { scale: a, x: e, y: f };
}

/** A site image where it lies on the ground, from the tiles that are here. */
export const ImageShape = memo(function ImageShape({ layer, levels, tiles }: ImageShapeProps) {
  const sheet = useRef<HTMLCanvasElement | undefined>(undefined);
  const paint = useCallback(
    (context: Context) => {
      const pen = context._context;
      const seen = seenPart(layer, lookOf(pen), pen.canvas);
      if (!seen) return;
      const at = levelFor(levels, seen.share);
      const level = levels[at];
      const wanted = level ? tilesIn(layer.blob, at, level, seen.part) : [];
      const pieces = wanted.flatMap((tile) => tiles.pieceFor(tile, levels) ?? []);
      if (layer.opacity >= 1) return paintPieces(pen, layer, pieces, seen.share);
      // Pieces reach over each other: they are laid on a sheet of their own before it is made transparent.
      sheet.current ??= document.createElement('canvas');
      paintThrough(pen, sheet.current, layer.opacity, (on) => paintPieces(on, layer, pieces, seen.share));
    },
    [layer, levels, tiles],
  );
  return <Shape sceneFunc={paint} perfectDrawEnabled={false} />;
});

function paintThrough(
  pen: CanvasRenderingContext2D,
  sheet: HTMLCanvasElement,
  opacity: number,
  paint: (on: CanvasRenderingContext2D) => void,
): void {
  const { width, height } = pen.canvas;
  const on = sheet.getContext('2d');
  if (!on) return;
  if (sheet.width !== width || sheet.height !== height) {
    sheet.width = width;
    sheet.height = height;
  }
  on.setTransform(1, 0, 0, 1, 0, 0);
  on.clearRect(0, 0, width, height);
  on.setTransform(pen.getTransform());
  paint(on);
  pen.save();
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.globalAlpha = opacity;
  pen.drawImage(sheet, 0, 0);
  pen.restore();
}

/** Where an image lies that is not here: on its way, or not to be had. */
export const ImageFrame = memo(function ImageFrame(props: {
  readonly layer: ImageLayer;
  readonly held: Held | undefined;
}) {
  const corners = cornersOf(props.layer);
  const [first, , third] = corners;
  const pen = { stroke: INKS.softInk, strokeWidth: 1, strokeScaleEnabled: false, perfectDrawEnabled: false };
  return (
    <>
      <Line points={toSheetLine(corners)} closed dash={[6, 6]} {...pen} />
      {props.held?.kind === 'missing' && first && third && (
        <Line points={toSheetLine([first, third])} dash={[6, 6]} {...pen} />
      )}
    </>
  );
});
