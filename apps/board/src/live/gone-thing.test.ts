import type { NamedEdit } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../reading/two-holes.test-plan.ts';
import { LAND } from '../tools/land/land.test-site.ts';
import { goneThingOf, thingGoneWords } from './gone-thing.ts';

const plan: Plan = { ...PLAN, site: LAND };
const without = (id: string): Plan => ({
  ...plan,
  site: { ...LAND, features: LAND.features.filter((feature) => feature.id !== id) },
});
const POND = { of: 'feature', feature: 'pond', ring: 0 } as const;
const at = (x: number, y: number) => ({ x, y });

test.each<NamedEdit>([
  { edit: 'move vertex', outline: POND, from: at(200, 200), to: at(190, 190) },
  { edit: 'add vertex', outline: POND, after: at(200, 200), at: at(250, 190) },
  { edit: 'move outline', outline: POND, by: at(5, 5) },
  { edit: 'change feature', feature: 'pond', to: { buffer: 20 } },
])('a drag of a pond that somebody removes is let go, and said by name: $edit', (edit) => {
  expect(goneThingOf(edit, plan)).toBeUndefined();
  const gone = goneThingOf(edit, without('pond'));
  expect(gone?.gone).toBe('the thing');
  expect(gone && thingGoneWords(gone, plan, [{ name: 'Ann' }])).toBe(
    'The water was removed by Ann meanwhile; your drag was let go.',
  );
  expect(gone && thingGoneWords(gone, plan, [{ name: 'Ann' }, { name: 'Jo' }])).toMatch(/by somebody else/);
});

test('a vertex that somebody else moved first is let go, and the outline stays as they put it', () => {
  const edit = { edit: 'move vertex', outline: POND, from: at(201, 200), to: at(190, 190) } as const;
  expect(goneThingOf(edit, plan)).toEqual({ thing: { kind: 'feature', id: 'pond' }, gone: 'its vertex' });
});

test('what is only being drawn is not gone', () => {
  const [pond] = LAND.features;
  if (!pond) throw new Error('the land has features');
  expect(
    goneThingOf({ edit: 'add features', features: [pond] }, { ...plan, site: { ...LAND, features: [] } }),
  ).toBeUndefined();
});
