/** Numbers in [0, 1) from the browser's own chance, for ids: two people's never meet. */
export function chance(): number {
  const [number = 0] = crypto.getRandomValues(new Uint32Array(1));
  return number / 2 ** 32;
}
