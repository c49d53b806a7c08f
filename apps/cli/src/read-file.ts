import { readFile, stat } from 'node:fs/promises';
import { LARGEST_COURSE_FILE, tooLargeSentence } from '@loopwright/formats';
import { EXIT, type ExitCode } from './exit-codes.ts';

export type ReadFile =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'refused'; readonly why: string; readonly code: ExitCode };

/** The text of a file, its size looked at first; or one sentence about why there is none. */
export async function readCourseText(path: string): Promise<ReadFile> {
  try {
    const { size, isDirectory } = await sizeOf(path);
    if (isDirectory) return { kind: 'refused', why: `'${path}' is a folder: name a file in it.`, code: EXIT.noFile };
    if (size > LARGEST_COURSE_FILE) return { kind: 'refused', why: tooLargeSentence(size), code: EXIT.badFile };
    return { kind: 'text', text: await readFile(path, 'utf8') };
  } catch (error) {
    return { kind: 'refused', why: whyNot(path, error), code: EXIT.noFile };
  }
}

async function sizeOf(path: string): Promise<{ readonly size: number; readonly isDirectory: boolean }> {
  const found = await stat(path);
  return { size: found.size, isDirectory: found.isDirectory() };
}

function whyNot(path: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT' || code === 'ENOTDIR') return `There is no file '${path}': check its name and folder.`;
  if (code === 'EACCES' || code === 'EPERM') return `'${path}' may not be read: ask for the right to read it.`;
  return `'${path}' cannot be read (${String(code ?? 'unknown cause')}): copy it somewhere else and try again.`;
}
