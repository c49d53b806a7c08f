import type {
  Base,
  Disposition,
  Feature,
  Hole,
  ImageLayer,
  LoopFrame,
  Round,
  SettingOverrides,
  SiteMark,
  Sketch,
  TeeSet,
} from '@loopwright/model';
import type { Root } from '../roots.ts';
import type { Read } from './part-reader.ts';
import type { SiteFrame } from './read-site.ts';
import type { RoutingFrame } from './read-things.ts';

/** What the groups of each root read as. */
export interface ValueOf {
  readonly site: SiteFrame;
  readonly bases: Base;
  readonly marks: SiteMark;
  readonly features: Feature;
  readonly images: ImageLayer;
  readonly sketches: Sketch;
  readonly teeSets: TeeSet;
  readonly routings: RoutingFrame;
  readonly loops: LoopFrame;
  readonly rounds: Round;
  readonly holes: Hole;
  readonly settings: SettingOverrides;
  readonly dispositions: Disposition;
}

export type ReadGroups<R extends Root> = ReadonlyMap<string, Read<ValueOf[R]>>;

/** Every group of the document as it was read. */
export type ReadRoots = { readonly [R in Root]: ReadGroups<R> };
