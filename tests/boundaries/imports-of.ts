import { posix } from 'node:path';
import { filesMatching, placeIn, type SourceFile } from './source-files.ts';

export interface Import {
  /** What stands between the quotes. */
  readonly of: string;
  readonly file: SourceFile;
  /** 'path:line'. */
  readonly at: string;
}

const STATEMENT = /^[ \t]*(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]|^[ \t]*import\s*['"]([^'"]+)['"]/gm;
const CALL = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;

/** Every module a file names: statements, re-exports and import calls. */
export function importsOf(file: SourceFile): readonly Import[] {
  const found = [...file.text.matchAll(STATEMENT), ...file.text.matchAll(CALL)];
  return found.flatMap((match) => {
    const name = match[1] ?? match[2];
    const offset = match.index + (match[0].length - match[0].trimStart().length);
    return name === undefined ? [] : [{ of: name, file, at: placeIn(file, offset) }];
  });
}

/** All code of packages, apps and tests. */
export const CODE = filesMatching(/^(packages|apps|tests)\/.*\.(ts|tsx|mjs)$/);
export const IMPORTS = CODE.flatMap(importsOf);

/** Where a relative import leads, from the top; undefined for the name of a package. */
export function pathOf({ of, file }: Import): string | undefined {
  return of.startsWith('.') ? posix.join(posix.dirname(file.path), of) : undefined;
}

/** The files of a package that its public entries reach: what others get, without tests and what only tests use. */
export function reachedFrom(entries: readonly string[]): ReadonlySet<string> {
  const byPath = new Map(CODE.map((file) => [file.path, file]));
  const reached = new Set<string>();
  const waiting = [...entries];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const file = byPath.get(path);
    if (!file || reached.has(path)) continue;
    reached.add(path);
    waiting.push(...importsOf(file).flatMap((found) => pathOf(found) ?? []));
  }
  return reached;
}
