import { expect, test } from 'vitest';
import { siteEdit } from './site-edit.ts';

const SITE = { name: 'Ferrow Saltings', note: '', units: 'yards' } as const;

test('nothing changed is no step', () => {
  expect(siteEdit(SITE, { ...SITE, name: ' Ferrow Saltings ' })).toBeUndefined();
});

test('one change is that edit, several are one step', () => {
  expect(siteEdit(SITE, { ...SITE, name: 'Ferrow' })).toEqual({ edit: 'name site', name: 'Ferrow' });
  expect(siteEdit(SITE, { ...SITE, note: 'invented', units: 'metres' })).toMatchObject({
    edit: 'several',
    edits: [{ edit: 'note site' }, { edit: 'set units', units: 'metres' }],
  });
});
