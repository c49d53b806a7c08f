import { useEffect, useState } from 'react';
import { chance } from '../instruments/chance.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { Slot } from '../live/slot.ts';
import { type ImageImports, openImageImports } from './image-imports.ts';
import { checkPictureWith, openReader } from './reader/client.ts';
import { sendPicture } from './send-picture.ts';

/** The imports of the board that is open. @param incoming  files on their way to it: what comes is taken out */
export function useImageImports(
  session: BoardSession,
  address: string,
  incoming: Slot<readonly File[]>,
): ImageImports | undefined {
  const [imports, setImports] = useState<ImageImports>();
  useEffect(() => {
    const opened = openImageImports({
      edit: session.edit,
      plan: () => session.frame.get()?.plan ?? session.writtenPlan.get(),
      say: session.say,
      address,
      random: chance,
      check: (file, onDoing, signal) => checkPictureWith(openReader, file, onDoing, signal),
      send: sendPicture,
    });
    const take = () => {
      const files = incoming.get();
      if (files.length === 0) return;
      incoming.set([]);
      opened.add(files);
    };
    take();
    const stop = incoming.onChange(take);
    setImports(opened);
    return () => {
      stop();
      opened.close();
    };
  }, [session, address, incoming]);
  return imports;
}
