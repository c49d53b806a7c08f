/**
 * Whether two views say the same, field by field, for React's `memo`: a row that says the same is not drawn again.
 *
 * Fields that are lists or views of their own are compared one level further down.
 */
export function saysTheSame(before: object, after: object): boolean {
  return fieldsEqual(before, after, 2);
}

function fieldsEqual(before: object, after: object, depth: number): boolean {
  const [first, second] = [Object.entries(before), new Map(Object.entries(after))];
  if (first.length !== second.size) return false;
  return first.every(([key, value]) => second.has(key) && valuesEqual(value, second.get(key), depth));
}

function valuesEqual(before: unknown, after: unknown, depth: number): boolean {
  if (Object.is(before, after)) return true;
  if (depth === 0 || !isObject(before) || !isObject(after)) return false;
  return Array.isArray(before) === Array.isArray(after) && fieldsEqual(before, after, depth - 1);
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
