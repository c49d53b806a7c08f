import type { Plan } from '@loopwright/model';
import * as Y from 'yjs';
import type { DoneStep, EditResult, PlanDocument, PutBackResult, Stop, UndoResult, UnreadField } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
import { writesFor } from './edits/writes-for.ts';
import { openHistory, type TurnedBack } from './history.ts';
import { openLayingOver } from './reading/laying-over.ts';
import { layOver, NOTHING_READ, type Reading, unreadOf } from './reading/reading.ts';
import { type Changes, followChanges, writeTo } from './shared-doc.ts';

/** The plan of one board over a shared document. Only this package knows that it is one. */
export class SharedPlan implements PlanDocument {
  /** For the connection; no signature of the package shows it. */
  readonly doc: Y.Doc;
  readonly #changes: Changes;
  readonly #history = openHistory();
  readonly #listeners = new Set<() => void>();
  #reading: Reading = NOTHING_READ;
  readonly #layOver = openLayingOver();

  constructor(doc: Y.Doc) {
    this.doc = doc;
    this.#changes = followChanges(doc);
    doc.on('afterTransaction', (transaction: Y.Transaction) => {
      if (transaction.changed.size > 0) for (const listener of [...this.#listeners]) listener();
    });
  }

  // Arrow functions, so that each can be handed on by itself.
  readonly read = (): Plan => this.#current().plan;

  readonly readWith = (live: readonly NamedEdit[]): Plan => this.#layOver(this.#current(), live).plan;

  readonly edit = (edit: NamedEdit): EditResult => {
    const reading = this.#current();
    const writes = writesFor(edit, reading);
    if (typeof writes === 'string') return writes;
    this.#history.record(edit, writes, reading.cells);
    writeTo(this.doc, writes);
    return 'done';
  };

  readonly undo = (): UndoResult => this.#turnBack(this.#history.undo(this.#current().cells));

  readonly redo = (): UndoResult => this.#turnBack(this.#history.redo(this.#current().cells));

  readonly steps = () => this.#history.steps();

  readonly done = (): readonly DoneStep[] => this.#history.done();

  readonly putBack = (from: number): PutBackResult =>
    this.#turnBack(this.#history.putBack(from, this.#current().cells));

  readonly unread = (): readonly UnreadField[] => [...unreadOf(this.#current().read), ...this.#changes.stray()];

  readonly onChange = (listener: () => void): Stop => {
    // A listener of one's own: the same function may be registered twice and stopped once.
    const own = () => listener();
    this.#listeners.add(own);
    return () => {
      this.#listeners.delete(own);
    };
  };

  readonly state = (): Uint8Array => Y.encodeStateAsUpdate(this.doc);

  readonly close = (): void => {
    this.#listeners.clear();
    this.doc.destroy();
  };

  #current(): Reading {
    this.#reading = layOver(this.#reading, this.#changes.take());
    return this.#reading;
  }

  #turnBack<Result>({ writes, result }: TurnedBack<Result>): Result {
    if (writes.length > 0) writeTo(this.doc, writes);
    return result;
  }
}

export interface OpenPlanOptions {
  /** This page's number among the board's pages; chosen by chance unless a test needs the same again. */
  readonly client?: number;
}

/**
 * Opens the plan of a board: empty, or from stored bytes.
 *
 * @throws Error if the bytes are not a stored document: whoever read them from a file parses first
 */
export function openPlan(state?: Uint8Array, options: OpenPlanOptions = {}): PlanDocument {
  const doc = new Y.Doc();
  if (options.client !== undefined) doc.clientID = options.client;
  if (state) Y.applyUpdate(doc, state);
  return new SharedPlan(doc);
}
