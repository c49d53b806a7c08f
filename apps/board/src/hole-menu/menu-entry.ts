import type { NamedEdit } from '@loopwright/document';
import type { HoleId } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import type { InstrumentName } from '../instruments/instrument-name.ts';

/** A hole one can choose, in words. */
export interface HoleChoice {
  readonly hole: HoleId;
  readonly words: string;
}

/** Which other hole is meant: answered on the drawing, on the round, or from a list. */
export interface HoleQuestion {
  /** The hole it is asked for: no answer itself. */
  readonly hole: HoleId;
  readonly words: string;
  readonly choices: readonly HoleChoice[];
  /** `undefined` where it already is so. */
  editFor(other: HoleId): NamedEdit | undefined;
}

/** What choosing an entry does. */
export type HoleAct =
  | { readonly do: 'edit'; readonly edit: NamedEdit; readonly select?: Selection }
  | { readonly do: 'ask'; readonly question: HoleQuestion }
  | { readonly do: 'lengthen'; readonly hole: HoleId }
  | { readonly do: 'take'; readonly instrument: InstrumentName; readonly select?: Selection }
  | { readonly do: 'choose several'; readonly hole: HoleId };

export type MenuEntry =
  | { readonly title: string; readonly act: HoleAct }
  /** Cannot be done now, and why. */
  | { readonly title: string; readonly why: string }
  | { readonly title: string; readonly inside: readonly MenuEntry[] };

export interface MenuPart {
  readonly title: string;
  readonly entries: readonly MenuEntry[];
}
