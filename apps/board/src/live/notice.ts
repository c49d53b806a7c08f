import type { NamedEdit, PutBackResult, UndoResult } from '@loopwright/document';

/** What came of the last thing this person did, where it is worth a word. */
export type Notice =
  | { readonly kind: 'gone'; readonly edit: NamedEdit }
  | { readonly kind: 'stepped'; readonly result: UndoResult }
  | { readonly kind: 'put back'; readonly result: PutBackResult }
  | { readonly kind: 'locked' }
  /** Something an instrument or a sheet has to say. */
  | { readonly kind: 'said'; readonly words: string };
