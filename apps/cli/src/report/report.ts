import type { Finding, FindingUnit, Severity } from '@loopwright/analysis';
import type { Note } from '@loopwright/formats';
import type { GeoJsonPlace } from './geojson-place.ts';

/** The report as programs read it; every key is documented in README.md. SI, with the unit in the key. */
export interface Report {
  readonly loopwright: 1;
  readonly course: string;
  readonly holes: readonly HoleReport[];
  readonly loops: readonly LoopReport[];
  readonly total: TotalReport;
  readonly findings: readonly FindingReport[];
  readonly importNotes: readonly Note[];
}

export interface HoleReport {
  readonly number: number;
  readonly loop: string;
  readonly par: { readonly men: number; readonly women: number };
  readonly teeSets: Readonly<Record<string, { readonly lengthMetres: number; readonly lengthYards: number }>>;
  /** Null on an incomplete hole. */
  readonly bearingDegrees: number | null;
  /** The sharpest bend, right positive, left negative; 0 for a straight hole. */
  readonly bendDegrees: number | null;
  /** Null after the last hole. */
  readonly walkToNextMetres: number | null;
  /** Null where the player is on or through with the tee shot. */
  readonly approachMetres: number | null;
}

export interface LoopReport {
  readonly name: string;
  readonly par: number;
  readonly lengthMetres: number;
  readonly walkMetres: number;
  /** Each walk of the loop in order, to and from the base too: a card rounds each before it sums. */
  readonly walksMetres: readonly number[];
}

export interface TotalReport {
  readonly par: number;
  readonly lengthMetres: number;
  readonly walkMetres: number;
  readonly walksMetres: readonly number[];
  readonly roundMetres: number;
}

export interface FindingReport {
  readonly code: Finding['code'];
  readonly severity: Severity;
  /** Numbers, in the order the sentence names them. */
  readonly holes: readonly number[];
  readonly measured: number;
  readonly limit: number;
  readonly unit: FindingUnit;
  readonly place: GeoJsonPlace;
  readonly text: string;
  readonly source: string;
}
