/** The canvas as a shape of one's own paints on it: in sheet units, with lines that keep their weight on the screen. */
export type Canvas = CanvasRenderingContext2D;

/** A line as it is drawn: its colour, and its weight and dashes in pixels, however far one looks from. */
export interface Pen {
  readonly colour: string;
  readonly weight: number;
  readonly dash?: readonly number[];
}

/** Begins a path through points given as x, y, x, y … */
export function trace(canvas: Canvas, points: readonly number[]): void {
  canvas.beginPath();
  for (let at = 0; at + 1 < points.length; at += 2) {
    const [x, y] = [points[at] ?? 0, points[at + 1] ?? 0];
    if (at === 0) canvas.moveTo(x, y);
    else canvas.lineTo(x, y);
  }
}

/** Draws the path. @param scale  pixels for each unit of the canvas as it is turned and scaled now */
export function ink(canvas: Canvas, { colour, weight, dash = [] }: Pen, scale: number): void {
  canvas.strokeStyle = colour;
  canvas.lineWidth = weight / scale;
  canvas.setLineDash(dash.map((length) => length / scale));
  canvas.stroke();
}

/** Fills the path. */
export function wash(canvas: Canvas, colour: string): void {
  canvas.fillStyle = colour;
  canvas.fill();
}
