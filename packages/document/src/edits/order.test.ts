import { isOrderKey } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { differentKeys, type Placed, placeAfter } from './order.ts';

const byKey = (a: Placed, b: Placed) => (a.key === b.key ? (a.id < b.id ? -1 : 1) : a.key < b.key ? -1 : 1);
const put = (order: readonly Placed[], index: number): readonly Placed[] => {
  const { key, rekeyed } = placeAfter(order, index);
  const fresh = new Map(rekeyed.map((placed) => [placed.id, placed.key]));
  return [...order.map(({ id, key: old }) => ({ id, key: fresh.get(id) ?? old })), { id: 'new', key }].sort(byKey);
};

test('what is put in stands where it was put, whatever keys were there, and every key stays a key', () => {
  const keys = fc.array(fc.constantFrom('a0', 'a0', 'a0V', 'a1', 'Zz', 'zzzzz', 'b00'), { maxLength: 8 });
  fc.assert(
    fc.property(keys, fc.nat(8), (list, at) => {
      const order = list.filter(isOrderKey).map((key, index) => ({ id: `h${index}`, key }));
      order.sort(byKey);
      const index = Math.min(at, order.length) - 1;
      const after = put(order, index);
      expect(after.map(({ id }) => id)).toEqual([
        ...order.slice(0, index + 1).map(({ id }) => id),
        'new',
        ...order.slice(index + 1).map(({ id }) => id),
      ]);
      expect(after.every(({ key }) => isOrderKey(key))).toBe(true);
    }),
  );
});

test('only a run of equal keys is rekeyed, and only when something goes into it', () => {
  const order = [
    { id: 'a', key: 'a0' },
    { id: 'b', key: 'a1' },
    { id: 'c', key: 'a1' },
    { id: 'd', key: 'a2' },
  ];
  expect(placeAfter(order, 0).rekeyed).toEqual([]);
  expect(placeAfter(order, 2).rekeyed).toEqual([]);
  expect(placeAfter(order, 1).rekeyed.map(({ id }) => id)).toEqual(['b', 'c']);
});

test('however often something is put into the same gap, keys stay short', () => {
  let order: readonly Placed[] = [
    { id: 'a', key: 'a0' },
    { id: 'b', key: 'a1' },
  ];
  for (let i = 0; i < 500; i++) {
    const { key, rekeyed } = placeAfter(order, 0);
    const fresh = new Map(rekeyed.map((placed) => [placed.id, placed.key]));
    const [first, ...rest] = order.map(({ id, key: old }) => ({ id, key: fresh.get(id) ?? old }));
    order = first ? [first, { id: `n${i}`, key }, ...rest] : [];
  }
  expect(Math.max(...order.map(({ key }) => key.length))).toBeLessThanOrEqual(60);
  expect([...order].sort(byKey)).toEqual(order);
});

test('keys made different keep their order, and only equal ones are replaced', () => {
  const keys = fc.array(fc.constantFrom('a0', 'a0', 'a0V', 'a1', 'a1', 'Zz', 'zzzzz', 'b00'), { maxLength: 9 });
  fc.assert(
    fc.property(keys, (list) => {
      const order = list.filter(isOrderKey).map((key, index) => ({ id: `h${index}`, key }));
      order.sort(byKey);
      const different = differentKeys(order);
      expect(different.every((key, index) => index === 0 || (different[index - 1] ?? '') < key)).toBe(true);
      expect(different.every(isOrderKey)).toBe(true);
      const isAlone = ({ key }: Placed) => order.filter((other) => other.key === key).length === 1;
      order.forEach((placed, index) => {
        if (isAlone(placed)) expect(different[index]).toBe(placed.key);
      });
    }),
  );
});
