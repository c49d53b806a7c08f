import type { NamedEdit } from '@loopwright/document';

/** Several edits as one step with its name; the edit itself when it is only one, `undefined` when there is none. */
export function severalEdit(does: string, edits: readonly NamedEdit[]): NamedEdit | undefined {
  const [only] = edits;
  return edits.length > 1 ? { edit: 'several', does, edits } : only;
}
