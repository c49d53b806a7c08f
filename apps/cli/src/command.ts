import type { LengthUnit } from '@loopwright/model';

export interface ReportCommand {
  readonly kind: 'report';
  readonly file: string;
  readonly course?: string;
  readonly routing?: string;
  readonly units: LengthUnit;
  readonly format: 'text' | 'json';
}

export type Command = ReportCommand | { readonly kind: 'help' } | { readonly kind: 'wrong'; readonly why: string };

const OPTIONS = ['course', 'routing', 'units', 'format'] as const;
type Option = (typeof OPTIONS)[number];

export const USAGE = `loopwright report FILE [--course NAME] [--routing NAME] [--units yards|metres] [--format text|json]

Card, walks, totals and findings of a course.

  FILE       a board file exported by Loopwright, or a course as GeoJSON
  --course   which course of a file that holds several
  --routing  which routing of a board that holds several (default: the first)
  --units    yards or metres on the card (default: metres)
  --format   text for people, json for programs (default: text)
`;

/** What was asked for, from the words after the program's name. Options may stand anywhere, as `--name value` or `--name=value`. */
export function parseCommand(words: readonly string[]): Command {
  const [verb, ...rest] = words;
  if (verb === undefined || verb === 'help' || words.includes('--help') || words.includes('-h'))
    return { kind: 'help' };
  if (verb !== 'report') return wrong(`There is no command '${verb}'`);
  const chosen = new Map<Option, string>();
  const files: string[] = [];
  const left = [...rest];
  for (let word = left.shift(); word !== undefined; word = left.shift()) {
    if (!word.startsWith('--')) {
      files.push(word);
      continue;
    }
    const [name = '', ...given] = word.slice(2).split('=');
    const option = OPTIONS.find((known) => known === name);
    if (!option) return wrong(`There is no option '--${name}'`);
    const value = given.length > 0 ? given.join('=') : left.shift();
    if (value === undefined || value === '') return wrong(`'--${name}' needs a value`);
    chosen.set(option, value);
  }
  return reportCommand(files, chosen);
}

function reportCommand(files: readonly string[], chosen: ReadonlyMap<Option, string>): Command {
  const [file, ...more] = files;
  if (file === undefined) return wrong('Name the file to report on');
  if (more.length > 0) return wrong(`One file at a time: '${more[0]}' is one too many`);
  const units = chosen.get('units') ?? 'metres';
  const format = chosen.get('format') ?? 'text';
  if (units !== 'yards' && units !== 'metres') return wrong(`'--units' is yards or metres, not '${units}'`);
  if (format !== 'text' && format !== 'json') return wrong(`'--format' is text or json, not '${format}'`);
  const [course, routing] = [chosen.get('course'), chosen.get('routing')];
  return {
    kind: 'report',
    file,
    ...(course !== undefined && { course }),
    ...(routing !== undefined && { routing }),
    units,
    format,
  };
}

function wrong(why: string): Command {
  return { kind: 'wrong', why: `${why}: see 'loopwright help'.` };
}
