/** How deep and how large a value may be. */
export interface ValueLimits {
  readonly mostDepth: number;
  readonly mostBytes: number;
}

const plainPrototypes: ReadonlySet<unknown> = new Set([Object.prototype, null]);

/**
 * Roughly the bytes a value takes, or `undefined` when it is not plain JSON within the limits: finite numbers, strings,
 * booleans, null, lists, and objects that are nothing but their own fields.
 *
 * Cost: O(size), and stops as soon as a limit is passed.
 */
export function plainSize(value: unknown, limits: ValueLimits, depth = 0): number | undefined {
  if (value === null || typeof value === 'boolean') return 1;
  if (typeof value === 'number') return Number.isFinite(value) ? 8 : undefined;
  if (typeof value === 'string') return value.length <= limits.mostBytes ? value.length + 2 : undefined;
  if (typeof value !== 'object' || depth >= limits.mostDepth) return undefined;
  if (!Array.isArray(value) && !plainPrototypes.has(Object.getPrototypeOf(value))) return undefined;
  let size = 2;
  for (const [name, member] of Object.entries(value)) {
    const inner = plainSize(member, limits, depth + 1);
    if (inner === undefined) return undefined;
    size += inner + (Array.isArray(value) ? 1 : name.length + 3);
    if (size > limits.mostBytes) return undefined;
  }
  return size;
}

/** Whether two plain values are the same: same fields, whatever their order; −0 and 0 are one place. */
export function isSameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const inA = new Map<string, unknown>(Object.entries(a));
  const inB = Object.entries(b);
  if (inA.size !== inB.length) return false;
  return inB.every(([name, member]) => inA.has(name) && isSameValue(inA.get(name), member));
}

/** Freezes a plain value all the way down, and gives it back. */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const member of Object.values(value)) frozen(member);
  return Object.freeze(value);
}
