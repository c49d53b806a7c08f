/**
 * Smooth noise in [0, 1] over the plane, for textures of ground: random values on a unit lattice, blended.
 *
 * @param random  fills the lattice once; after that the field never changes
 */
export type Noise = (x: number, y: number) => number;

const SIZE = 256;
const MASK = SIZE - 1;

export function noiseFrom(random: () => number): Noise {
  const lattice = Float32Array.from({ length: SIZE * SIZE }, () => random());
  const valueAt = (column: number, row: number) => lattice[((row & MASK) << 8) | (column & MASK)] ?? 0;
  return (x, y) => {
    const column = Math.floor(x);
    const row = Math.floor(y);
    const across = eased(x - column);
    const down = eased(y - row);
    const upper = valueAt(column, row) * (1 - across) + valueAt(column + 1, row) * across;
    const lower = valueAt(column, row + 1) * (1 - across) + valueAt(column + 1, row + 1) * across;
    return upper * (1 - down) + lower * down;
  };
}

/** Three scales of the same noise, each half as strong as the one before. */
export function layered(noise: Noise, x: number, y: number): number {
  return (noise(x, y) * 4 + noise(x * 2.03 + 17, y * 2.03 + 5) * 2 + noise(x * 4.1 + 43, y * 4.1 + 71)) / 7;
}

function eased(share: number): number {
  return share * share * (3 - 2 * share);
}
