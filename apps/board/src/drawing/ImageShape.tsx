import type { ImageLayer } from '@loopwright/model';
import { memo } from 'react';
import { levelFor, type Pyramid } from './image-pyramid.ts';
import { Group, Image } from './konva-shapes.ts';

interface ImageShapeProps {
  readonly layer: ImageLayer;
  readonly pyramid: Pyramid;
  readonly scale: number;
}

/** A site image where it lies on the ground, in the smallest size that is sharp enough. */
export const ImageShape = memo(function ImageShape({ layer, pyramid, scale }: ImageShapeProps) {
  const [a, b, c, d, e, f] = layer.placement;
  const metresPerPixel = Math.sqrt(Math.abs(a * e - b * d));
  const level = levelFor(pyramid, metresPerPixel * scale * window.devicePixelRatio);
  // Sheet y is site y turned over: the lower row of the placement changes sign.
  const turn = Math.atan2(-d, a);
  const along = Math.sqrt(a * a + d * d);
  const determinant = a * -e - b * -d;
  const down = determinant / along;
  const skew = (a * b + d * e) / (along * along);
  return (
    <Group x={c} y={-f} rotation={(turn * 180) / Math.PI} scaleX={along} scaleY={down} skewX={(skew * along) / down}>
      <Image
        image={level}
        width={layer.widthPixels}
        height={layer.heightPixels}
        opacity={layer.opacity}
        perfectDrawEnabled={false}
      />
    </Group>
  );
});
