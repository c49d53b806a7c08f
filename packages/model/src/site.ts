import type { BaseId, FeatureId, ImageLayerId, SiteMarkId } from './ids.ts';
import type { Sketch } from './sketch.ts';
import type { Ring, SitePoint } from './space.ts';
import type { LengthUnit } from './units.ts';

/** Where on Earth the site plane lies: site metres = (projected − origin) ÷ scaleFactor, so that lengths are ground lengths. */
export interface SiteLocation {
  /** WGS 84 degrees, of the plane's origin. */
  readonly latitude: number;
  readonly longitude: number;
  readonly epsg: number;
  /** Easting and northing of the site plane's origin, in the projection's metres. */
  readonly origin: { readonly easting: number; readonly northing: number };
  /** Combined scale factor at the origin: projected distance ÷ ground distance. */
  readonly scaleFactor: number;
}

export interface Boundary {
  /** One or more outlines; the site is what lies inside any. Holes (inner rings) are other people's land. */
  readonly outlines: readonly Ring[];
  readonly inner: readonly Ring[];
  /** How far the line may be off, in metres; 0 for a surveyed one. Taken off before any finding. */
  readonly tolerance: number;
}

/** A place holes leave from and return to. Several candidates are allowed. */
export interface Base {
  readonly id: BaseId;
  readonly name: string;
  /** Where golfers gather: walks to and from the base are measured here. */
  readonly apron: SitePoint;
  readonly footprints: readonly Ring[];
  readonly note?: string;
}

export type FeatureKind =
  | 'water'
  | 'wetland'
  | 'trees'
  | 'protected'
  | 'easement'
  | 'flood line'
  | 'building'
  | 'public road'
  | 'public path'
  | 'neighbour'
  | 'utility'
  | 'landmark'
  | 'ground unit'
  | 'range'
  | 'bunker'
  | 'fairway'
  | 'course path'
  | 'other';

export type FeatureGeometry =
  /** Outer outline first, then any holes in it. */
  | { readonly type: 'area'; readonly rings: readonly Ring[] }
  | { readonly type: 'line'; readonly points: readonly SitePoint[] }
  | { readonly type: 'point'; readonly at: SitePoint };

/** What a golfer or the works may do there. Kinds are presets of these. */
export interface Allows {
  readonly carry: boolean;
  readonly walk: boolean;
  readonly mow: boolean;
  readonly build: boolean;
}

export interface Feature {
  readonly id: FeatureId;
  readonly kind: FeatureKind;
  readonly name?: string;
  readonly geometry: FeatureGeometry;
  readonly allows: Allows;
  /** Distance kept around it, in metres. */
  readonly buffer: number;
  /** Whose line it is. */
  readonly authority?: string;
  readonly note?: string;
  /** Of a landmark or trees, metres above ground. */
  readonly height?: number;
}

/** Something found on the land before any hole. */
export interface SiteMark {
  readonly id: SiteMarkId;
  readonly kind: 'green site' | 'tee site' | 'landing ground';
  readonly at: SitePoint;
  readonly verdict: 'natural' | 'needs work';
  readonly note?: string;
}

/** An image under the drawing, kept once as a blob under its hash. */
export interface ImageLayer {
  readonly id: ImageLayerId;
  /** SHA-256, hex. */
  readonly blob: string;
  readonly widthPixels: number;
  readonly heightPixels: number;
  /** Site point of pixel (column, row): x = a·column + b·row + c, y = d·column + e·row + f. */
  readonly placement: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
  readonly opacity: number;
  /** What people call it; at first the file's name. */
  readonly name?: string;
  /** How its size on the ground is known; a `guess` shows lengths with a caution. Absent: as placed by whoever made the file. */
  readonly scaledBy?: 'guess' | 'two points' | 'world file';
}

/** The coordinates of the site plane's origin in a survey grid of which no more is known, e.g. of a world file. */
export interface SurveyGrid {
  /** In metres. */
  readonly easting: number;
  readonly northing: number;
}

export interface Site {
  readonly name: string;
  /** True north, radians clockwise from +y. */
  readonly north: number;
  readonly location?: SiteLocation;
  readonly boundary?: Boundary;
  readonly bases: readonly Base[];
  readonly marks: readonly SiteMark[];
  readonly features: readonly Feature[];
  readonly images: readonly ImageLayer[];
  /** A note shown with the site's name, e.g. that the scenario is invented. */
  readonly note?: string;
  /** The unit people on this board begin with; each may read it in another. */
  readonly units?: LengthUnit;
  readonly grid?: SurveyGrid;
  /** Drawn beside the plan, in the order it was drawn. */
  readonly sketches?: readonly Sketch[];
}
