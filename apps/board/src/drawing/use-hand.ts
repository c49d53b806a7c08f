import type { NamedEdit } from '@loopwright/document';
import { type HoleId, makeId, type PartId, type Routing, type Site, type SitePoint } from '@loopwright/model';
import { useMemo } from 'react';
import type { DoEdit, Select, Selection } from '../board/parts.ts';
import { chance } from '../instruments/chance.ts';
import { holesInFrame } from '../tools/holes-in-frame.ts';
import type { Hand, HeldParts } from '../tools/tool.ts';
import type { HoleView } from './hole-view.ts';
import type { Viewpoint } from './viewpoint.ts';

export interface HandParts {
  readonly routing: Routing;
  readonly site: Site;
  readonly selection: Selection;
  readonly viewpoint: Viewpoint;
  readonly holes: readonly HoleView[];
  /** Draws a vertex to guides nearby; absent until the instruments are there. */
  readonly snap: Hand['snap'] | undefined;
  readonly select: Select;
  readonly drag: (edit: NamedEdit | undefined) => void;
  readonly drop: () => void;
  readonly edit: DoEdit;
  readonly say: (words: string) => void;
  readonly askAboutPin: (hole: HoleId, parts: readonly PartId[], further?: readonly HeldParts[]) => void;
  readonly sayLocked: () => void;
  /** Shows a frame being drawn. */
  readonly frame: (corners: readonly [SitePoint, SitePoint] | undefined) => void;
}

/** What the tools may do here. */
export function useHand(parts: HandParts): Hand {
  const {
    routing,
    site,
    snap,
    selection,
    holes,
    select,
    drag,
    drop,
    edit,
    say,
    viewpoint,
    askAboutPin,
    sayLocked,
    frame,
  } = parts;
  return useMemo(
    () => ({
      routing,
      site,
      selection,
      snap: (at, beside) => snap?.(at, beside) ?? at,
      freshId: (letter) => makeId(letter, chance),
      drag,
      drop,
      letGo: () => drag(undefined),
      edit,
      select,
      pan: viewpoint.pan,
      frame,
      holesIn: (corners) => holesInFrame(holes, corners),
      askAboutPin,
      sayLocked,
      say,
    }),
    [routing, site, snap, selection, holes, select, drag, drop, edit, say, viewpoint, askAboutPin, sayLocked, frame],
  );
}
