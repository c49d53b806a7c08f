import type { CoordinateReading, FeaturesFile } from '@loopwright/formats';
import type { Site } from '@loopwright/model';

/** What is asked of the worker: a file, the site it is to lie on, and how its numbers are meant when somebody has said. */
export interface Question {
  readonly file: Blob;
  readonly site: Site;
  readonly coordinates?: CoordinateReading;
}

export type Answer = FeaturesFile;
