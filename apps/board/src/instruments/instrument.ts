/**
 * Drawing instruments: what a person holds when the bare hand is not enough. An instrument hears the pointer, or the
 * keyboard's cross, knows neither canvas nor document, and answers with edits, shown live while they are in the making.
 */
import type { Analysis } from '@loopwright/analysis';
import type { EditResult, NamedEdit } from '@loopwright/document';
import type { Plan, Routing, SitePoint } from '@loopwright/model';
import type { Me, Reading, Selection } from '../board/parts.ts';
import type { Watched } from '../live/slot.ts';
import type { Hit } from '../tools/hit.ts';
import type { Gesture, PointerAt } from '../tools/tool.ts';
import type { InstrumentName } from './instrument-name.ts';

/** Where a point came to lie, and what drew it there, in words for the pointer ('square to 4', 'on the drive: 240 m'). */
export interface Snapped {
  readonly at: SitePoint;
  readonly because?: string;
  /** The guide that was met, to be drawn. */
  readonly guide?: readonly SitePoint[];
}

export interface SnapWishes {
  /** The point the next leg starts from: right angles, the drive length and equal lengths are measured from here. */
  readonly from?: SitePoint;
  /** The point before `from`: a leg goes straight on, or turns square. */
  readonly before?: SitePoint;
  /** What this point is for: decides which guides pull. */
  readonly for: 'tee' | 'turn' | 'green' | 'turn or green' | 'turn or tee' | 'vertex' | 'anything';
  /** Metres drawn up to `from`: a hole is made as long as one beside it. */
  readonly along?: number;
  /** The id of a thing that does not pull, e.g. the feature whose own vertex is moved; 'boundary' for the boundary. */
  readonly without?: string;
  /** Rings of the instrument's own, e.g. a good walk about the last green. */
  readonly rings?: readonly { readonly centre: SitePoint; readonly radius: number; readonly because: string }[];
}

/** What an instrument may use. Everything is as of now: read it anew at each event. */
export interface Bench {
  plan(): Plan;
  /** The plan without anybody's drag, my own showing too. */
  written(): Plan;
  routing(): Routing;
  analysis(): Analysis;
  reading(): Reading;
  selection(): Selection;
  me(): Me;
  /** Pixels a metre takes on the screen now. */
  scale(): number;
  /** A fresh id with that first letter. */
  freshId(letter: string): string;
  /** Pulls a point to guides nearby. Returns it as it is while snapping is off, or the person holds Alt. */
  snap(at: SitePoint, wishes: SnapWishes): Snapped;
  /** Shows everybody what this edit would do; `undefined` puts it back without a trace. */
  show(edit: NamedEdit | undefined): void;
  /** Writes what is shown: one step. */
  write(): EditResult;
  /** Writes an edit that was not shown before. */
  edit(edit: NamedEdit): EditResult;
  select(selection: Selection): void;
  /** Says something to those who listen, and at the foot of the drawing. */
  say(words: string): void;
  /** Puts the instrument away: the bare hand again. */
  putAway(): void;
}

/** What an instrument draws over the plan, in site metres. */
export interface InstrumentPicture {
  readonly lines?: readonly {
    readonly points: readonly SitePoint[];
    /** `new` what will be written, `guide` what helps to place it, `measure` what is read off. */
    readonly manner: 'new' | 'guide' | 'measure';
    readonly closed?: true;
  }[];
  readonly rings?: readonly {
    readonly centre: SitePoint;
    readonly radius: number;
    readonly manner: 'guide' | 'measure';
  }[];
  readonly dots?: readonly { readonly at: SitePoint; readonly manner: 'new' | 'guide' | 'grip' }[];
  /** Words on the plan, e.g. a leg's length at its middle. */
  readonly words?: readonly { readonly at: SitePoint; readonly text: string }[];
  /** Words at the pointer: the length and par so far. */
  readonly atPointer?: readonly string[];
}

/** An instrument in the hand. */
export interface Running {
  /** What to do next, in one sentence. */
  readonly prompt: Watched<string>;
  readonly picture: Watched<InstrumentPicture>;
  /** What may be typed now, e.g. 'length of this leg'; `undefined` when nothing. */
  readonly entry?: Watched<string | undefined>;
  /** The pointer, or the cross, is here; no button is down. */
  hover(at: PointerAt): void;
  /** A press: either it is all (a click), or it goes on as a gesture. */
  press(at: PointerAt, hit: Hit | undefined): Gesture | undefined;
  /** Typed and confirmed with Enter, e.g. '380' or '120, 45'. Answers what was wrong with it, or nothing. */
  enter?(typed: string): string | undefined;
  /** What stands in the field before Enter: it may be shown what it would do. */
  typing?(typed: string): void;
  /** Where the last point was placed: the keyboard's cross goes on from what was typed. */
  lastPoint?(): SitePoint | undefined;
  /** Enter with nothing typed, or a double click: what was drawn so far is all. */
  finish?(): void;
  /** One step back within the drawing (Backspace). Whether there was one. */
  back?(): boolean;
  /** Esc: puts back what is half drawn. Whether anything was; if not, the instrument is put away. */
  letGo(): boolean;
  /** Another instrument was taken, or the board is closed: nothing half drawn may stay. */
  stop(): void;
}

export interface Instrument {
  readonly name: InstrumentName;
  /** On its button. */
  readonly title: string;
  /** What it is for, in one short sentence, for its tip. */
  readonly does: string;
  /** The key that takes it is in letters.ts, where all of them are chosen together. */
  readonly key?: string;
  /**
   * How a finger works it. `aims` (unless said): a tap presses; a finger that moves carries a cross above itself, and
   * presses there when it is lifted. `strokes`: it presses where and when it comes down, e.g. a pencil.
   */
  readonly finger?: 'aims' | 'strokes';
  /** On the button that ends what is drawn, where 'Done' does not say what becomes of it. */
  readonly ends?: string;
  start(bench: Bench): Running;
}
