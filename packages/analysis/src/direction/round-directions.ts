import type { SettingKey } from '@loopwright/model';
import type { RoundFigures } from '../figures.ts';
import type { RoundHole } from '../rhythm/round-holes.ts';
import type { RoundContext } from '../round-context.ts';

/** A round, made ready for the checks of its directions. */
export interface RoundDirections {
  readonly round: RoundFigures;
  readonly name: string;
  readonly holes: readonly RoundHole[];
  readonly settings: RoundContext['settings'];
  /** Whether two holes run the same way within an angle that is a setting. */
  isOneWay(first: RoundHole, second: RoundHole, angle: SettingKey): boolean;
}
