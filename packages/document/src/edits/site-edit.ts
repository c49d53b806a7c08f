import type {
  Base,
  BaseId,
  Boundary,
  Feature,
  FeatureId,
  ImageLayer,
  ImageLayerId,
  LengthUnit,
  SiteMark,
  SiteMarkId,
  SitePoint,
  Sketch,
  SketchId,
  SurveyGrid,
  TeeSet,
  TeeSetId,
} from '@loopwright/model';

/** The fields of a thing that an edit sets; `null` takes a field away that the thing can do without. */
export type FieldsOf<T> = { readonly [Field in keyof Omit<T, 'id'>]?: T[Field] | null };

/** One outline or line of something on the site. */
export type OutlineOf =
  | { readonly of: 'boundary'; readonly part: 'outlines' | 'inner'; readonly ring: number }
  | { readonly of: 'base'; readonly base: BaseId; readonly ring: number }
  /** Of a line there is one, `ring` 0. */
  | { readonly of: 'feature'; readonly feature: FeatureId; readonly ring: number }
  | { readonly of: 'sketch'; readonly sketch: SketchId };

/** What people do to the land and to what is drawn beside the plan. */
export type SiteEdit =
  | { readonly edit: 'name site'; readonly name: string }
  | { readonly edit: 'note site'; readonly note: string }
  | { readonly edit: 'set units'; readonly units: LengthUnit }
  /** True north, radians clockwise from +y. */
  | { readonly edit: 'set north'; readonly north: number }
  | { readonly edit: 'set grid'; readonly grid: SurveyGrid }
  /** All of the boundary, e.g. one just drawn; `null` takes it away. */
  | { readonly edit: 'draw boundary'; readonly boundary: Boundary | null }
  | { readonly edit: 'add base'; readonly base: Base }
  | { readonly edit: 'change base'; readonly base: BaseId; readonly to: FieldsOf<Base> }
  | { readonly edit: 'remove base'; readonly base: BaseId }
  /** One just drawn, or all of an imported file. */
  | { readonly edit: 'add features'; readonly features: readonly Feature[] }
  | { readonly edit: 'change feature'; readonly feature: FeatureId; readonly to: FieldsOf<Feature> }
  | { readonly edit: 'remove features'; readonly features: readonly FeatureId[] }
  | { readonly edit: 'add mark'; readonly mark: SiteMark }
  | { readonly edit: 'change mark'; readonly mark: SiteMarkId; readonly to: FieldsOf<SiteMark> }
  | { readonly edit: 'remove mark'; readonly mark: SiteMarkId }
  /** A vertex is known by where it lay: `gone` when somebody moved or removed it meanwhile. */
  | { readonly edit: 'move vertex'; readonly outline: OutlineOf; readonly from: SitePoint; readonly to: SitePoint }
  /** Between the vertex at `after` and the next one. */
  | { readonly edit: 'add vertex'; readonly outline: OutlineOf; readonly after: SitePoint; readonly at: SitePoint }
  /** `nothing` when too few would be left to be an outline (3) or a line (2). */
  | { readonly edit: 'remove vertex'; readonly outline: OutlineOf; readonly at: SitePoint }
  | { readonly edit: 'move outline'; readonly outline: OutlineOf; readonly by: SitePoint }
  | { readonly edit: 'add image'; readonly image: ImageLayer }
  | {
      readonly edit: 'change image';
      readonly image: ImageLayerId;
      readonly to: FieldsOf<Omit<ImageLayer, 'blob' | 'widthPixels' | 'heightPixels'>>;
    }
  /** Other pixels in the same place: the corners stay where they lie. */
  | {
      readonly edit: 'replace image';
      readonly image: ImageLayerId;
      readonly blob: string;
      readonly widthPixels: number;
      readonly heightPixels: number;
      readonly name?: string;
    }
  /** Under the one before it in the list: the first lies lowest. */
  | { readonly edit: 'order image'; readonly image: ImageLayerId; readonly after: ImageLayerId | 'first' }
  | { readonly edit: 'remove image'; readonly image: ImageLayerId }
  | { readonly edit: 'add tee set'; readonly teeSet: TeeSet; readonly after: TeeSetId | 'first' }
  | { readonly edit: 'change tee set'; readonly teeSet: TeeSetId; readonly to: FieldsOf<TeeSet> }
  | { readonly edit: 'order tee set'; readonly teeSet: TeeSetId; readonly after: TeeSetId | 'first' }
  /** `nothing` for the last one: holes are measured from somewhere. */
  | { readonly edit: 'remove tee set'; readonly teeSet: TeeSetId }
  | { readonly edit: 'add sketch'; readonly sketch: Sketch }
  | { readonly edit: 'change sketch'; readonly sketch: SketchId; readonly to: FieldsOf<Sketch> }
  | { readonly edit: 'wipe sketches'; readonly sketches: readonly SketchId[] };
