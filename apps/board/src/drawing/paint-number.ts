import type { SitePoint } from '@loopwright/model';
import { discRadius } from './disc-radius.ts';
import type { HoleState } from './hole-state.ts';
import type { HoleView } from './hole-view.ts';
import { INKS, SANS } from './inks.ts';
import { type Canvas, ink, wash } from './pen.ts';
import { toSheet } from './site-transform.ts';

/** Paints the number of a hole on its disc, legible however far one looks from. */
export function paintNumber(
  canvas: Canvas,
  { label, spare }: Pick<HoleView, 'label' | 'spare'>,
  at: SitePoint,
  scale: number,
  state: HoleState,
): void {
  const radius = discRadius(scale);
  const isChosen = state === 'selected';
  canvas.save();
  canvas.translate(...toSheet(at));
  canvas.scale(1 / scale, 1 / scale);
  canvas.beginPath();
  canvas.arc(0, 0, radius, 0, 2 * Math.PI);
  wash(canvas, isChosen ? INKS.ink : INKS.sheet);
  const pen = { colour: spare ? INKS.softInk : INKS.ink, weight: state === 'hovered' ? 2.4 : 1.5 };
  ink(canvas, { ...pen, ...(spare ? { dash: [3, 2.5] } : {}) }, 1);
  canvas.font = `600 ${radius * (label.length > 2 ? 0.87 : 1.09)}px ${SANS}`;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'middle';
  canvas.fillStyle = isChosen ? INKS.sheet : INKS.ink;
  canvas.fillText(label, 0, 0.5);
  canvas.restore();
}
