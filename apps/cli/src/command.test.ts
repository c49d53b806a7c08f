import { expect, test } from 'vitest';
import { parseCommand } from './command.ts';

test('a file alone is a report in metres for people', () => {
  expect(parseCommand(['report', 'a.json'])).toEqual({
    kind: 'report',
    file: 'a.json',
    units: 'metres',
    format: 'text',
  });
});

test('options stand anywhere, with a space or an equals sign', () => {
  const words = ['report', '--units=yards', 'a.json', '--course', 'Made-up Old', '--format', 'json', '--routing=B=2'];
  expect(parseCommand(words)).toEqual({
    kind: 'report',
    file: 'a.json',
    course: 'Made-up Old',
    routing: 'B=2',
    units: 'yards',
    format: 'json',
  });
});

test.each([
  [['draw'], /no command 'draw'/],
  [['report'], /Name the file/],
  [['report', 'a', 'b'], /One file at a time/],
  [['report', 'a', '--colour', 'red'], /no option '--colour'/],
  [['report', 'a', '--units', 'miles'], /yards or metres, not 'miles'/],
  [['report', 'a', '--format', 'pdf'], /text or json/],
  [['report', 'a', '--course'], /needs a value/],
])('%j is answered in one sentence', (words, why) => {
  expect(parseCommand(words)).toMatchObject({ kind: 'wrong', why: expect.stringMatching(why) });
});

test.each([[[]], [['help']], [['report', '--help']]])('%j asks for help', (words) => {
  expect(parseCommand(words)).toEqual({ kind: 'help' });
});
