import type { Disposition } from './disposition.ts';
import type { Hole } from './hole.ts';
import type { BaseId, HoleId, LoopId, RoundId, RoutingId, TeeSetId } from './ids.ts';
import type { SettingOverrides } from './settings/index.ts';
import type { Site } from './site.ts';

/** An ordered run of holes that leaves and returns to a base. */
export interface Loop {
  readonly id: LoopId;
  readonly name: string;
  readonly base?: BaseId;
  /** In playing order: the holes seated here, by seat key, ties by id. */
  readonly holes: readonly HoleId[];
}

/** Loops played as one: 'A + B'. */
export interface Round {
  readonly id: RoundId;
  readonly name: string;
  readonly loops: readonly LoopId[];
}

/** One complete idea of how the holes lie and follow each other. */
export interface Routing {
  readonly id: RoutingId;
  readonly name: string;
  readonly locked: boolean;
  readonly loops: readonly Loop[];
  readonly rounds: readonly Round[];
  /** Every hole of the routing by id order, spare and removed ones too. Untouched holes keep their identity between reads. */
  readonly holes: readonly Hole[];
  /** Spare holes in the order of the tray. */
  readonly spare: readonly HoleId[];
}

/** The players a tee set is made for; distances are settings. */
export type ModelPlayer = 'scratch man' | 'bogey man' | 'scratch woman' | 'bogey woman';

export interface TeeSet {
  readonly id: TeeSetId;
  readonly name: string;
  readonly player: ModelPlayer;
}

/** Everything decided on a board. What follows from it is recomputed, never stored. */
export interface Plan {
  readonly loopwright: 1;
  readonly site: Site;
  /** From the back: the first is the longest and gives the card its first column. */
  readonly teeSets: readonly TeeSet[];
  readonly routings: readonly Routing[];
  readonly settings: SettingOverrides;
  readonly dispositions: readonly Disposition[];
}
