/**
 * What the parts of the board are given: head, round, drawer and home. The board screen joins them; the parts only show.
 *
 * Every value is immutable and keeps its identity while it says the same, so that a part can be memoised by its props.
 * Callbacks keep their identity for the life of the screen.
 */
import type { Analysis, Ripple } from '@loopwright/analysis';
import type { DoneStep, NamedEdit, OutlineOf, Person, SavedState } from '@loopwright/document';
import type {
  BaseId,
  FeatureId,
  FindingKey,
  HoleId,
  ImageLayerId,
  LengthUnit,
  PartId,
  Plan,
  Routing,
  RoutingId,
  SiteMarkId,
  SitePoint,
  SketchId,
  TeeSetId,
} from '@loopwright/model';
import type { ImageImports } from '../images/image-imports.ts';
import type { InstrumentName } from '../instruments/instrument-name.ts';
import type { Created } from '../live/board-api.ts';

/** Something on the site, picked out. */
export type SiteThing =
  | { readonly kind: 'boundary' }
  | { readonly kind: 'base'; readonly id: BaseId }
  | { readonly kind: 'feature'; readonly id: FeatureId }
  | { readonly kind: 'mark'; readonly id: SiteMarkId }
  | { readonly kind: 'image'; readonly id: ImageLayerId }
  | { readonly kind: 'sketch'; readonly id: SketchId };

/** What this page has picked out: a hole with a part of it, a finding, a walk, or something on the site. */
export interface Selection {
  /** The hole picked out; the last of several. */
  readonly hole?: HoleId;
  /** Further holes picked out with it, without it. */
  readonly also?: readonly HoleId[];
  readonly thing?: SiteThing;
  /** One vertex of that thing, known by where it lies. */
  readonly vertex?: { readonly outline: OutlineOf; readonly at: SitePoint };
  readonly part?: PartId;
  readonly finding?: FindingKey;
  /** The key of a walk. */
  readonly walk?: string;
}

/** How this person reads the board; others may read it otherwise. Kept on this machine. */
export interface Reading {
  readonly units: LengthUnit;
  readonly teeSet: TeeSetId;
}

/** Somebody at this page, as the others see them. */
export interface Me {
  readonly name: string;
  /** Index into `PEOPLE_INKS`. */
  readonly ink: number;
}

/**
 * What the last change did, or what the drag in progress is doing.
 * Against everybody's present state without it: others' drags are in both sides.
 */
export interface Change {
  readonly state: 'in progress' | 'done';
  /** Absent when it is mine. */
  readonly by?: { readonly name: string; readonly ink: number };
  readonly edits: readonly NamedEdit[];
  /** The edits were taken back, not done. */
  readonly takenBack?: true;
  readonly before: Analysis;
  readonly after: Analysis;
  readonly beforePlan: Plan;
  /** Already steadied: nothing flickers in it while the pointer trembles. */
  readonly ripple: Ripple;
}

/** The plan as everybody's hands hold it now, and what follows from it. */
export interface Consequences {
  readonly plan: Plan;
  readonly routing: Routing;
  readonly analysis: Analysis;
}

/** A place to bring into view on the drawing. */
export type Place =
  | { readonly kind: 'point'; readonly at: SitePoint }
  | { readonly kind: 'hole'; readonly hole: HoleId }
  | { readonly kind: 'finding'; readonly finding: FindingKey }
  | { readonly kind: 'walk'; readonly key: string }
  | { readonly kind: 'all' };

/** One undoable step. Answers what came of it through `notice`. */
export type DoEdit = (edit: NamedEdit) => void;
/** A drag in progress, shown to everybody with its consequences; `undefined` ends it without a trace. */
export type Preview = (edit: NamedEdit | undefined) => void;
export type Select = (selection: Selection) => void;
export type GoTo = (place: Place) => void;

export interface HeadProps {
  readonly siteName: string;
  readonly siteNote?: string;
  /** The unit people on this board begin with, where it was set. */
  readonly siteUnits?: LengthUnit;
  readonly routing: Routing;
  readonly routings: readonly Routing[];
  readonly teeSets: Plan['teeSets'];
  readonly me: Me;
  readonly people: readonly Person[];
  readonly saved: SavedState;
  readonly reading: Reading;
  readonly findingsShown: boolean;
  /** What undo and redo would do, for their words; absent when there is nothing. */
  readonly undoStep?: NamedEdit;
  readonly redoStep?: NamedEdit;
  /** My steps that still stand, oldest first. */
  readonly done: readonly DoneStep[];
  /** The address with its secret, to hand to the team. */
  readonly inviteLink: string;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  /** Puts back that step of mine and all after it. */
  readonly onPutBack: (from: number) => void;
  readonly edit: DoEdit;
  readonly onReading: (reading: Reading) => void;
  readonly onFindingsShown: (shown: boolean) => void;
  readonly onRouting: (routing: RoutingId) => void;
  /** Shows the routing shown before this one. */
  readonly onFlip: () => void;
  /** Brings everything, or what a person is pointing at, into view. */
  readonly goTo: GoTo;
  readonly onSaveFile: () => void;
  readonly onKeys: () => void;
}

export interface RoundProps extends Consequences {
  readonly reading: Reading;
  readonly selection: Selection;
  readonly people: readonly Person[];
  /** Figures beside the value as they change; `in progress` while somebody drags. */
  readonly change?: Change;
  readonly findingsShown: boolean;
  readonly select: Select;
  readonly goTo: GoTo;
  readonly edit: DoEdit;
  readonly preview: Preview;
  /** Opens the menu of what is picked out, at a place on the window. */
  readonly more: (at: { readonly x: number; readonly y: number }) => void;
}

/** The drawer's sheets: card, hole, site, findings, what changed, limits, and the table of holes and points. */
export interface DrawerProps extends Consequences {
  readonly reading: Reading;
  readonly selection: Selection;
  readonly change?: Change;
  readonly findingsShown: boolean;
  readonly select: Select;
  readonly goTo: GoTo;
  readonly edit: DoEdit;
  readonly preview: Preview;
  /** Takes an instrument into the hand, e.g. from a button that draws something. */
  readonly take: (name: InstrumentName) => void;
  /** Says something at the foot of the drawing, and to those who listen. */
  readonly say: (words: string) => void;
  /** Opens the menu of what is picked out, at a place on the window. */
  readonly more: (at: { readonly x: number; readonly y: number }) => void;
  /** Brings out the sheet on which all of what was just chosen is changed. */
  readonly openSheet?: (sheet: 'hole' | 'site' | 'findings') => void;
  /** Brings pictures onto the board; absent where there is no server to keep them. */
  readonly imports?: ImageImports;
  /** Brings a file of what lies on the land onto the board; asks before anything is added. */
  readonly bringFeatures?: (file: File) => void;
}

export interface HomeProps {
  /** Makes a board, empty or holding this plan; the secret is in the link's fragment. */
  readonly createBoard: (request: { readonly name?: string; readonly plan?: Plan }) => Promise<Created>;
  /** Goes to a board by its link; files that go along are laid on it. */
  readonly openLink: (link: string, files?: readonly File[]) => void;
}
