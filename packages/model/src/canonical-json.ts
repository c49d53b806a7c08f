/**
 * The one way to write a JSON value down, so that equal plans have equal bytes and equal fingerprints.
 *
 * Names sorted by UTF-16 code units, no spaces, numbers and texts as ECMAScript writes them. Fields that are
 * `undefined` are left out, as in any JSON.
 *
 * @throws TypeError for what JSON cannot hold: NaN, infinities, functions, lone surrogates. The caller's bug: parsed
 *   values have none of them.
 *
 * Cost: O(n log n) in the number of fields.
 * Source: RFC 8785, JSON Canonicalization Scheme (2020), sections 3.2.2 and 3.2.3.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return canonicalText(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new TypeError('canonicalJson: numbers must be finite');
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object') throw new TypeError(`canonicalJson: ${typeof value} has no place in JSON`);
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, field]) => `${canonicalText(name)}:${canonicalJson(field)}`);
  return `{${fields.join(',')}}`;
}

function canonicalText(text: string): string {
  if (/\p{Surrogate}/u.test(text)) throw new TypeError('canonicalJson: text must not hold half a character');
  return JSON.stringify(text);
}
