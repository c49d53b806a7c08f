import type { Write } from '../cells.ts';
import type { NamedEdit } from './named-edit.ts';

/** The edit of that name with its fields. */
export type EditNamed<Name extends NamedEdit['edit']> = Extract<NamedEdit, { readonly edit: Name }>;

/** What an edit would write: keys and values, or why it would not write anything. */
export type EditWrites = readonly Write[] | 'gone' | 'nothing';
