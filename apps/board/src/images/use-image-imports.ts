import { useEffect, useState } from 'react';
import { chance } from '../instruments/chance.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { Slot } from '../live/slot.ts';
import { type ImageImports, openImageImports } from './image-imports.ts';
import { checkPictureWith, openReader } from './reader/client.ts';
import { sendPicture } from './send-picture.ts';

interface ImportsParts {
  readonly session: BoardSession;
  /** Where the board keeps its images, with a slash at the end. */
  readonly address: string;
  /** Files on their way to the board: what comes is taken out. */
  readonly incoming: Slot<readonly File[]>;
  /** The pictures this page brought itself, by their hash: they are not fetched again. */
  readonly own: Map<string, Blob>;
}

/** The imports of the board that is open. */
export function useImageImports({ session, address, incoming, own }: ImportsParts): ImageImports | undefined {
  const [imports, setImports] = useState<ImageImports>();
  useEffect(() => {
    const opened = openImageImports({
      edit: session.edit,
      plan: session.writtenPlan.get,
      chosen: () => {
        const { thing } = session.selection.get();
        return thing?.kind === 'image' ? thing.id : undefined;
      },
      say: session.say,
      address,
      random: chance,
      check: (file, onDoing, signal) => checkPictureWith(openReader, file, onDoing, signal),
      send: async (sending) => {
        const sent = await sendPicture(sending);
        if (sent?.kind === 'kept') own.set(sent.hash, sending.picture.file);
        return sent;
      },
    });
    const take = () => {
      const files = incoming.get();
      if (files.length === 0) return;
      incoming.set([]);
      void opened.add(files);
    };
    take();
    const stop = incoming.onChange(take);
    setImports(opened);
    return () => {
      stop();
      opened.close();
    };
  }, [session, address, incoming, own]);
  return imports;
}
