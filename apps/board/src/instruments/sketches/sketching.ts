import type { EditResult, NamedEdit } from '@loopwright/document';
import type { SketchId, SketchShape } from '@loopwright/model';
import type { Bench } from '../instrument.ts';

/** The edit that puts a sketch of mine on the board: not kept until somebody keeps it. */
export function addSketch(bench: Bench, id: SketchId, shape: SketchShape): Extract<NamedEdit, { edit: 'add sketch' }> {
  const { name, ink } = bench.me();
  return { edit: 'add sketch', sketch: { id, shape, by: name, ink, kept: false } };
}

/** Says why a sketch did not come onto the board. */
export function sayIfFull(bench: Bench, result: EditResult): void {
  if (result !== 'done')
    bench.say('The board took no further sketch: it holds a thousand. Wipe some that are not kept.');
}
