import { chance } from '../instruments/chance.ts';
import type { BoardSession } from '../live/board-session.ts';
import { keepImage } from '../offline/keep-image.ts';
import { type ImageImports, openImageImports } from './image-imports.ts';
import { checkPictureWith, openReader } from './reader/client.ts';
import { sendPicture } from './send-picture.ts';

export interface PageImportsParts {
  readonly session: BoardSession;
  /** Where the board keeps its images, with a slash at the end. */
  readonly address: string;
  /** The pictures this page brought itself, by their hash: they are not fetched again. */
  readonly own: Map<string, Blob>;
}

/** The imports of the page's own board, with the page's workers and requests. */
export function openPageImports({ session, address, own }: PageImportsParts): ImageImports {
  return openImageImports({
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
      if (sent?.kind === 'kept') {
        const { file } = sending.picture;
        own.set(sent.hash, file);
        void keepImage(address + sent.hash, file);
      }
      return sent;
    },
  });
}
