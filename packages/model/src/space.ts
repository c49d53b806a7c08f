declare const space: unique symbol;

/** A place on the site plane: metres, x east, y north. A literal `{ x, y }` needs no cast. */
export interface SitePoint {
  readonly x: number;
  readonly y: number;
  readonly [space]?: 'site';
}

/** A place on the drawing as it is shown: pixels, x right, y down. Only the page's own transform makes these. */
export interface CanvasPoint {
  readonly x: number;
  readonly y: number;
  readonly [space]?: 'canvas';
}

/** A closed outline, listed once around; the last point is not a repeat of the first. */
export type Ring = readonly SitePoint[];
