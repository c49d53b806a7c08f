import { useEffect, useState } from 'react';
import type { Slot } from '../live/slot.ts';
import type { ImageImports } from './image-imports.ts';
import type { PageImportsParts } from './open-page-imports.ts';

interface ImportsParts extends PageImportsParts {
  /** Files on their way to the board: what comes is taken out. */
  readonly incoming: Slot<readonly File[]>;
}

/** The imports of the board that is open. They are fetched once it is shown: nobody waits for them to see a plan. */
export function useImageImports({ session, address, incoming, own }: ImportsParts): ImageImports | undefined {
  const [imports, setImports] = useState<ImageImports>();
  useEffect(() => {
    let here = true;
    let stop: () => void = () => undefined;
    const begin = (opened: ImageImports) => {
      const take = () => {
        const files = incoming.get();
        if (files.length === 0) return;
        incoming.set([]);
        void opened.add(files);
      };
      take();
      const stopTaking = incoming.onChange(take);
      stop = () => {
        stopTaking();
        opened.close();
      };
      setImports(opened);
    };
    void import('./open-page-imports.ts').then(({ openPageImports }) => {
      if (here) begin(openPageImports({ session, address, own }));
    });
    return () => {
      here = false;
      stop();
    };
  }, [session, address, incoming, own]);
  return imports;
}
