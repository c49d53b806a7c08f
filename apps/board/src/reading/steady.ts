/**
 * Whether two views say the same, field by field, for React's `memo`: a row that says the same is not drawn again.
 *
 * Fields that are lists or views of their own are compared one level further down.
 */
export function saysTheSame(before: object, after: object): boolean {
  return fieldsEqual(before, after, 2);
}

function fieldsEqual(before: object, after: object, depth: number): boolean {
  // Asked for each row of each picture of a drag: nothing is made for the answer but the lists of names.
  const [first, second] = [Object.entries(before), Object.entries(after)];
  if (first.length !== second.length) return false;
  return first.every(([key, value], place) => {
    const across = second[place]?.[0] === key ? second[place] : second.find(([other]) => other === key);
    return across !== undefined && valuesEqual(value, across[1], depth);
  });
}

function valuesEqual(before: unknown, after: unknown, depth: number): boolean {
  if (Object.is(before, after)) return true;
  if (depth === 0 || !isObject(before) || !isObject(after)) return false;
  return Array.isArray(before) === Array.isArray(after) && fieldsEqual(before, after, depth - 1);
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
