import { IndexeddbPersistence } from 'y-indexeddb';
import type * as Y from 'yjs';

/** The copy of a document that stays on this machine. */
export interface OfflineCopy {
  /** Whether there is one: a page in private mode, or on a full disk, may get none. */
  readonly kept: boolean;
  close(): void;
}

const NOT_KEPT: OfflineCopy = { kept: false, close: () => undefined };

/** Whether the machine lets this page keep a database of that name. */
function canOpen(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    try {
      const request = indexedDB.open(name);
      request.onerror = (event) => {
        event.preventDefault();
        resolve(false);
      };
      request.onblocked = () => resolve(false);
      request.onupgradeneeded = () => {
        // A database made here would lack the library's stores: it is left to make its own.
        request.transaction?.abort();
        resolve(true);
      };
      request.onsuccess = () => {
        request.result.close();
        resolve(true);
      };
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      resolve(false); // storage is switched off for this page
    }
  });
}

/**
 * Loads what is kept under a name into the document, and keeps what changes from then on. Never rejects: without a
 * database the page works on, and says that offline work is not kept.
 */
export async function openOfflineCopy(name: string, doc: Y.Doc): Promise<OfflineCopy> {
  if (typeof indexedDB === 'undefined' || !(await canOpen(name))) return NOT_KEPT;
  const persistence = new IndexeddbPersistence(name, doc);
  await persistence.whenSynced;
  return {
    kept: true,
    close: () => {
      void persistence.destroy();
    },
  };
}
