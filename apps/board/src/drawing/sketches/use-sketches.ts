import type { NamedEdit } from '@loopwright/document';
import type { HoleId, Sketch } from '@loopwright/model';
import { useMemo } from 'react';
import { openSteadyList } from '../steady-list.ts';
import type { SketchView } from './sketch-view.ts';
import { openSketchViews, type SketchGround } from './sketch-views.ts';

const NONE: readonly never[] = [];

interface SketchesShown extends SketchGround {
  readonly sketches: readonly Sketch[] | undefined;
  /** Everybody's drags in progress. */
  readonly drags: readonly NamedEdit[];
  /** Holes that are being moved: rings about them go along. */
  readonly moving: ReadonlySet<HoleId>;
}

/** The sketches of the drawing, those in somebody's hands apart from those at rest. */
export function useSketches({ sketches = NONE, drags, moving, routing, analysis, units }: SketchesShown) {
  const makers = useMemo(
    () => ({ views: openSketchViews(), still: openSteadyList<SketchView>(), live: openSteadyList<SketchView>() }),
    [],
  );
  const views = makers.views(sketches, { routing, analysis, units });
  const inHand = new Set(drags.flatMap(sketchesOf));
  for (const { id, shape } of sketches) {
    if (shape.kind === 'ring' && 'hole' in shape.about && moving.has(shape.about.hole)) inHand.add(id);
  }
  return {
    all: views,
    still: makers.still(inHand.size === 0 ? views : views.filter(({ id }) => !inHand.has(id))),
    live: makers.live(inHand.size === 0 ? NONE : views.filter(({ id }) => inHand.has(id))),
  };
}

/** The sketches an edit speaks of. */
function sketchesOf(edit: NamedEdit): readonly string[] {
  switch (edit.edit) {
    case 'add sketch':
      return [edit.sketch.id];
    case 'change sketch':
      return [edit.sketch];
    case 'move vertex':
    case 'add vertex':
    case 'remove vertex':
    case 'move outline':
      return edit.outline.of === 'sketch' ? [edit.outline.sketch] : [];
    default:
      return [];
  }
}
