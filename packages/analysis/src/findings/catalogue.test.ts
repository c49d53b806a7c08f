import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isSettingKey, SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { WORDS } from '../wording/sentences.ts';
import { CATALOGUE, isFindingCode } from './catalogue.ts';

const SOURCES = join(import.meta.dirname, '..');
const page = readFileSync(join(SOURCES, '..', 'FINDINGS.md'), 'utf8');

/** Rows `| code | meaning | settings | source |` of the page. */
const ROWS = page.split('\n').flatMap((line) => {
  const [, code, meaning, settings, source] = line.split('|').map((cell) => cell.trim());
  const name = /^`([a-z-]+)`$/.exec(code ?? '')?.[1];
  if (name === undefined) return [];
  const keys = [...(settings ?? '').matchAll(/`([a-z-]+)`/g)].map(([, key]) => key ?? '');
  return [{ name, meaning, keys, source }];
});

const codeInSources = readdirSync(SOURCES, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !file.includes('.test.') && !file.includes('catalogue'))
  .map((file) => readFileSync(join(SOURCES, file), 'utf8'))
  .join('\n');

test('the page, the catalogue and the words name the same findings', () => {
  const codes = Object.keys(CATALOGUE).sort();
  expect(ROWS.map(({ name }) => name).sort()).toEqual(codes);
  expect(Object.keys(WORDS).sort()).toEqual(codes);
});

test.each(ROWS)(
  '$name: its settings are those of the catalogue, and its source is said',
  ({ name, meaning, keys, source }) => {
    expect(isFindingCode(name) && CATALOGUE[name].settings).toEqual(keys);
    expect(keys.every(isSettingKey)).toBe(true);
    expect(meaning).not.toBe('');
    expect(source).not.toBe('');
  },
);

test('every code in the sources is in the catalogue, and every one in the catalogue is in the sources', () => {
  const written = [...codeInSources.matchAll(/code: '([a-z-]+)'/g)].map(([, code]) => code ?? '');
  expect(written.filter((code) => !isFindingCode(code))).toEqual([]);
  const missing = Object.keys(CATALOGUE).filter((code) => !codeInSources.includes(`'${code}'`));
  expect(missing).toEqual([]);
});

test('every limit with a severity belongs to a finding, or is used where the page says so', () => {
  const used = new Set<string>(Object.values(CATALOGUE).flatMap(({ settings }) => [...settings]));
  // These shape the fan's tiers; the finding names the angle.
  const shaping = ['fan-tee-look', 'fan-tee-mention', 'fan-green-look', 'fan-green-mention'];
  const loose = SETTING_KEYS.filter(
    (key) => /-(stop|look|mention)$/.test(key) && !used.has(key) && !shaping.includes(key),
  );
  expect(loose).toEqual([]);
});

test('where somebody can be hurt, the setting says so', () => {
  const safety = Object.values(CATALOGUE).flatMap(({ subject, settings }) =>
    subject === 'clearance' ? [...settings] : [],
  );
  expect(safety.filter((key) => SETTINGS[key].safety !== true)).toEqual([]);
});
