import type { Box } from '@loopwright/geometry';
import type {
  BaseId,
  FeatureId,
  FindingKey,
  Green,
  HoleId,
  LoopId,
  ModelPlayer,
  Relation,
  RoundId,
  RoutingId,
  SettingKey,
  SitePoint,
  TeeSetId,
} from '@loopwright/model';

/** Everything the frame analysis says about one routing. Recomputed on every client, never stored or sent. */
export interface Analysis {
  readonly routing: RoutingId;
  /** Complete and incomplete holes, spare ones too, by hole id. Unchanged holes keep the same object between runs. */
  readonly holes: ReadonlyMap<HoleId, HoleFigures>;
  /** In playing order: base to first tee, between holes, last green to base; per loop. */
  readonly walks: readonly WalkFigures[];
  readonly loops: readonly LoopFigures[];
  readonly rounds: readonly RoundFigures[];
  /** Most severe first, then in playing order, then by key. */
  readonly findings: readonly Finding[];
}

export type Sex = 'men' | 'women';

/** A hole's own figures. Lengths in metres to the millimetre, angles in radians to 1e-6. */
export interface HoleFigures {
  readonly id: HoleId;
  /** Why the rest is missing, when it is: a hole without tee or green is incomplete. */
  readonly missing?: 'tee' | 'green';
  /** From the longest tee: tee, turn points, green centre. */
  readonly centreline: readonly SitePoint[];
  /** In the order of the plan's tee sets; one each, placed or proposed. */
  readonly tees: readonly TeeFigures[];
  readonly par: { readonly men: number; readonly women: number };
  /** Both values where the length lies in an overlap of the par table; one elsewhere. */
  readonly parsByLength: { readonly men: readonly number[]; readonly women: readonly number[] };
  /** Tee to green centre, straight, clockwise from the plane's +y. */
  readonly bearing: number;
  readonly bends: readonly Bend[];
  /** The tapered strip that play and safety need, as one outline; drawn, never flagged for overlap alone. */
  readonly corridor: readonly SitePoint[];
  /** The strip's half-width at places along the centreline, metres from its tee; even between them. */
  readonly corridorStations: readonly CorridorStation[];
  /** From the back tee's fan and later legs: the ground a ball may reach, inner (stop) and outer (look) angle. */
  readonly fans: readonly ShotFan[];
  /** The box around its tees, line, corridor and fans; absent on an incomplete hole. */
  readonly bounds?: Box;
  /** As the designer has it; absent on an incomplete hole. */
  readonly green?: Green;
  /** What the designer means with other holes. */
  readonly relations: readonly Relation[];
}

/** A hole's figures as far as they are known when its shot fans are laid. */
export type HoleBeforeFans = Omit<HoleFigures, 'fans' | 'bounds'>;

export interface CorridorStation {
  readonly along: number;
  readonly halfWidth: number;
}

/** A change of direction at a turn point. */
export interface Bend {
  readonly at: SitePoint;
  /** Positive angle, radians. */
  readonly angle: number;
  readonly side: 'left' | 'right';
}

export interface TeeFigures {
  readonly teeSet: TeeSetId;
  readonly at: SitePoint;
  /** Proposed tees are ours: the designer has not placed one. */
  readonly proposed: boolean;
  readonly measuredLength: number;
  readonly player: ModelPlayer;
  /** Where full shots of the tee set's model player finish, tee shot first; empty where the first reaches the green. */
  readonly landingAreas: readonly SitePoint[];
  /** Metres left into the green after the last full shot; absent where the player is on or through with the tee shot. */
  readonly approach?: number;
  /** The club for `approach`, from the share of the driver's distance. */
  readonly approachClub?: string;
}

/** Ground a ball from one place may reach: a sector of `reach` metres, `halfAngle` each side of `towards`. */
export interface ShotFan {
  readonly from: SitePoint;
  /** Unit vector of the line aimed along. */
  readonly towards: SitePoint;
  readonly reach: number;
  readonly halfAngleDegrees: number;
  readonly shot: 'tee shot' | 'second shot' | 'approach' | 'cut corner';
  readonly severity: Severity;
}

export interface WalkFigures {
  /** `from>to`, of hole and base ids: stable while the order stays. */
  readonly key: string;
  readonly loop: LoopId;
  readonly from: { readonly hole: HoleId } | { readonly base: BaseId };
  readonly to: { readonly hole: HoleId } | { readonly base: BaseId };
  /** From the green's edge (or apron) along the waypoints to the tee in use. */
  readonly path: readonly SitePoint[];
  readonly distance: number;
  /** Metres walked against the next line of play. */
  readonly walkBack: number;
  /** Absent while the board has no ground. */
  readonly climb?: number;
  readonly fall?: number;
  /** Seconds, on the slope where there is ground, else as on the level. */
  readonly time: number;
  readonly crossings: readonly WalkCrossing[];
}

/** Where a walk meets a line of play, a road or water. */
export interface WalkCrossing {
  readonly at: SitePoint;
  readonly what:
    | { readonly kind: 'line of play'; readonly hole: HoleId; readonly where: CrossingPlace; readonly ahead: number }
    | { readonly kind: 'feature'; readonly feature: FeatureId };
}

/** `behind` a tee or green is the usual, harmless way. `ahead` counts metres from the tee. */
export type CrossingPlace = 'ahead of the tee' | 'at a landing area' | 'in play' | 'short of the green' | 'behind';

/** One column of totals per tee set, in the plan's order. */
export interface TotalLengths {
  readonly teeSet: TeeSetId;
  readonly measuredLength: number;
  /** Lengths of the holes, metres, in order: a card rounds each before it sums. */
  readonly holeLengths: readonly number[];
}

export interface LoopFigures {
  readonly loop: LoopId;
  readonly holes: readonly HoleId[];
  readonly par: { readonly men: number; readonly women: number };
  readonly lengths: readonly TotalLengths[];
  /** Walks between its holes and to and from its base, metres and seconds. */
  readonly walk: number;
  readonly walkTime: number;
  /** Each of those walks, metres, in order: a card rounds each before it sums. */
  readonly walkLengths: readonly number[];
  /** Number of holes by bend and par, for the balance between loops. */
  readonly bends: { readonly left: number; readonly right: number };
  readonly pars: readonly { readonly par: number; readonly holes: number }[];
}

export interface RoundFigures {
  readonly round: RoundId;
  readonly holes: readonly HoleId[];
  readonly par: { readonly men: number; readonly women: number };
  readonly lengths: readonly TotalLengths[];
  readonly walk: number;
  readonly walkTime: number;
  /** Each walk of the round, metres, in order: a card rounds each before it sums. */
  readonly walkLengths: readonly number[];
  /** Each hole from its longest tee, metres, in order: what `onFoot` counts as played. */
  readonly playedLengths: readonly number[];
  /** Played (centrelines) and walked, metres: the golfer's way on foot, straight lines said. */
  readonly onFoot: number;
  /** Seconds of walking, holes and walks together. */
  readonly timeOnFoot: number;
  /** Playing directions, for the rose: eight sectors of 45° clockwise from north, metres and holes in each. */
  readonly rose: readonly { readonly holes: number; readonly length: number }[];
  /** Provisional length rating by tee set and sex; the slope that follows is not shown to clients. */
  readonly lengthRatings: readonly LengthRating[];
}

export interface LengthRating {
  readonly teeSet: TeeSetId;
  readonly sex: Sex;
  readonly scratch: number;
  readonly bogey: number;
}

export type Severity = 'stop' | 'look' | 'mention';

/** Where on the plan a finding lies. */
export type FindingPlace =
  | { readonly type: 'point'; readonly at: SitePoint }
  /** The closest two places, or the stretch concerned. */
  | { readonly type: 'line'; readonly points: readonly SitePoint[] }
  /** No single place: a run of pars, a direction. */
  | { readonly type: 'round' };

export type FindingUnit = 'm' | 'deg' | 'holes' | 'share' | 'min' | 'sectors' | 'pairs' | 'crossings' | 'strokes';

/**
 * One thing the analysis noticed. Its sentence is made by `@loopwright/analysis/wording`,
 * since hole numbers and units belong to the reader, not to the finding.
 */
export interface Finding {
  readonly key: FindingKey;
  /** An entry of FINDINGS.md. */
  readonly code: string;
  readonly severity: Severity;
  /** In the order the sentence names them. */
  readonly holes: readonly HoleId[];
  readonly features: readonly FeatureId[];
  readonly loop?: LoopId;
  readonly measured: number;
  readonly limit: number;
  readonly unit: FindingUnit;
  /** Which way is worse: `less` for clearances, `more` for walks. */
  readonly worse: 'less' | 'more';
  /** The setting whose limit was passed; its source is the finding's source. */
  readonly setting: SettingKey;
  readonly place: FindingPlace;
  /** What the sentence needs beyond the above, by name: 'shot', 'side', 'crossing', … */
  readonly detail: Readonly<Record<string, string | number>>;
  /** True where somebody can be hurt: 'kept on purpose' is not offered. */
  readonly safety: boolean;
}
