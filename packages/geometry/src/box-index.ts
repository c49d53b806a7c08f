import Flatbush from 'flatbush';
import type { Box } from './bounds.ts';

export interface BoxIndex {
  /** Places in the list given to `boxIndex` of the boxes that meet this one, ascending. */
  search(box: Box): readonly number[];
}

/** Finds the boxes near a place without trying each. Built in O(n log n); the list must not change afterwards. */
export function boxIndex(boxes: readonly Box[]): BoxIndex {
  if (boxes.length === 0) return { search: () => [] };
  const tree = new Flatbush(boxes.length);
  for (const box of boxes) tree.add(box.minX, box.minY, box.maxX, box.maxY);
  tree.finish();
  return {
    // The tree's own order depends on how it packs; ascending order is the same everywhere.
    search: (box) => tree.search(box.minX, box.minY, box.maxX, box.maxY).sort((a, b) => a - b),
  };
}
