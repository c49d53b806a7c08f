import type { SketchId } from '@loopwright/model';
import { ringCentre } from '../../drawing/sketches/ring-centre.ts';
import { REACH } from '../../tools/hit.ts';
import { sketchAt } from '../../tools/hit-sketch.ts';
import type { Gesture, PointerAt } from '../../tools/tool.ts';
import type { Bench } from '../instrument.ts';

/** The sketch under the pointer. */
export function sketchUnder(bench: Bench, at: PointerAt) {
  const reach = REACH[at.kind] / bench.scale();
  return sketchAt(bench.plan().site.sketches ?? [], at.site, reach, (about) =>
    ringCentre(about, bench.routing(), bench.analysis()),
  );
}

/** Wipes what it touches: everybody sees it go, and it is written as one step when the eraser is lifted. Kept ones stay. */
export function eraseFrom(bench: Bench, start: PointerAt): Gesture {
  const wiped = new Set<SketchId>();
  const touch = (at: PointerAt) => {
    const sketch = sketchUnder(bench, at);
    if (!sketch || wiped.has(sketch.id)) return;
    if (sketch.kept) return bench.say('That one is kept: let it go in the list of sketches first.');
    wiped.add(sketch.id);
    bench.show({ edit: 'wipe sketches', sketches: [...wiped] });
  };
  touch(start);
  return {
    cursor: 'cell',
    move: touch,
    end: () => {
      if (wiped.size > 0) bench.write();
    },
    cancel: () => bench.show(undefined),
  };
}
