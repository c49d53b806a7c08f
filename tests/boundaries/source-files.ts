import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's top folder. */
export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

const NOT_OURS = new Set(['node_modules', 'dist', 'data', 'coverage', 'test-results', '.git', '.vite']);

/** A text file of the repository; `path` is from its top, with '/'. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

function walk(folder: string): readonly string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return NOT_OURS.has(entry.name) ? [] : walk(path);
    return entry.isFile() ? [path] : [];
  });
}

const PATHS: readonly string[] = [...walk('')].sort();

/** Every file whose path matches, read. */
export function filesMatching(pattern: RegExp): readonly SourceFile[] {
  return PATHS.filter((path) => pattern.test(path)).map((path) => ({
    path,
    text: readFileSync(join(ROOT, path), 'utf8'),
  }));
}

/** Whether a file or folder stands at this path from the top. */
export function isThere(path: string): boolean {
  return existsSync(join(ROOT, path));
}

export function isTest(path: string): boolean {
  return /\.(test|bench)\.tsx?$/.test(path);
}

/** 'packages/model/src/x.ts' → 'packages/model'; 'tests/…' → 'tests'. */
export function homeOf(path: string): string {
  const [top = '', name = ''] = path.split('/');
  return top === 'packages' || top === 'apps' ? `${top}/${name}` : top;
}

/** 'path:line', as an editor opens it. */
export function placeIn(file: SourceFile, offset: number): string {
  return `${file.path}:${file.text.slice(0, offset).split('\n').length}`;
}

/**
 * The code without its comments and the words in its strings, every character kept in its place.
 *
 * Good enough for looking for names; a regular expression with a quote in it may confuse it, which shows at once.
 */
export function codeOnly(text: string): string {
  const blank = (found: string) => found.replace(/[^\n]/g, ' ');
  return text.replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/[^\n]*|'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, blank);
}

/** Every place where a pattern occurs, as 'path:line: what'. */
export function foundIn(
  files: readonly SourceFile[],
  pattern: RegExp,
  text = (file: SourceFile) => file.text,
): readonly string[] {
  return files.flatMap((file) =>
    [...text(file).matchAll(pattern)].map((match) => `${placeIn(file, match.index)}: ${match[0].trim()}`),
  );
}
