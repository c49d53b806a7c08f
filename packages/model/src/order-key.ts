const KEY_PATTERN = /^[A-Za-z][0-9A-Za-z]{1,99}$/;
const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const SMALLEST = `A${'0'.repeat(26)}`;

/**
 * Whether an untrusted value can be a place in an order: a fractional key, so that something can be put between any two
 * without touching the rest. Keys compare as plain strings.
 *
 * The first letter says how many digits the whole part has ('a' one, 'b' two, 'Z' one below 'a'); a fraction never ends
 * in '0', since nothing could be put before it.
 * Source: D. Greenspan, "Implementing Fractional Indexing" (2020), as the package fractional-indexing 4 checks it.
 */
export function isOrderKey(value: unknown): value is string {
  if (typeof value !== 'string' || !KEY_PATTERN.test(value) || value === SMALLEST) return false;
  const head = value.charCodeAt(0);
  const whole = head >= 97 ? head - 97 + 2 : 90 - head + 2;
  if (value.length < whole) return false;
  return value.length === whole || !value.endsWith('0');
}

/**
 * The key of the nth place (from 0) of a fresh order: a0, a1 … az, b00 … bzz.
 *
 * @throws RangeError beyond 3,906 places or below 0: an order that long is the caller's bug
 */
export function orderKeyAt(index: number): string {
  const digit = (n: number) => DIGITS.charAt(n);
  if (Number.isInteger(index) && index >= 0 && index < 62) return `a${digit(index)}`;
  const rest = index - 62;
  if (!Number.isInteger(rest) || rest < 0 || rest >= 62 * 62)
    throw new RangeError('orderKeyAt: index must be a whole number from 0 to 3905');
  return `b${digit(Math.floor(rest / 62))}${digit(rest % 62)}`;
}
