import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from './canonical-json.ts';

// Truth: RFC 8785, JSON Canonicalization Scheme (2020). Section 3.2.2 input and section 3.2.3 result.
const RFC_INPUT = String.raw`{
  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`;
const RFC_RESULT = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`;

test('the example of RFC 8785 section 3.2 comes out as printed there', () => {
  expect(canonicalJson(JSON.parse(RFC_INPUT))).toBe(RFC_RESULT);
});

test('names are sorted by UTF-16 code units, as in RFC 8785 section 3.2.3', () => {
  const input = {
    '\u20ac': 'Euro Sign',
    '\r': 'Carriage Return',
    '\ufb33': 'Hebrew Letter Dalet With Dagesh',
    '1': 'One',
    '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control',
    '\u00f6': 'Latin Small Letter O With Diaeresis',
  };
  const printed = [
    'Carriage Return',
    'One',
    'Control',
    'Latin Small Letter O With Diaeresis',
    'Euro Sign',
    'Emoji: Grinning Face',
    'Hebrew Letter Dalet With Dagesh',
  ];
  const values = [...canonicalJson(input).matchAll(/:"(.*?)"/gu)].map((match) => match[1]);
  expect(values).toEqual(printed);
});

// Truth: RFC 8785 appendix B, IEEE 754 bits and the text they are written as.
test.each([
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555557', '333333333.33333343'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
])('the number with bits %s is written %s', (bits, written) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  expect(canonicalJson(view.getFloat64(0))).toBe(written);
});

test('what JSON cannot hold is refused, as RFC 8785 requires', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, '\ud800', { '\udead': 1 }, undefined, () => 1])
    expect(() => canonicalJson(value)).toThrow(TypeError);
});

test('the order in which fields were made does not show', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue({ stringUnit: 'grapheme' })), (fields) => {
      const turned = Object.fromEntries(Object.entries(fields).reverse());
      expect(canonicalJson(turned)).toBe(canonicalJson(fields));
      expect(canonicalJson(JSON.parse(canonicalJson(fields)))).toBe(canonicalJson(fields));
    }),
  );
});
