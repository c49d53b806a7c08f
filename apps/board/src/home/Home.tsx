import { useState } from 'react';
import type { HomeProps } from '../board/parts.ts';
import { usePastedFiles } from '../images/use-pasted-files.ts';
import { useSteady } from '../reading/use-steady.ts';
import { DropField } from './DropField.tsx';
import { ImportSheet } from './ImportSheet.tsx';
import { NewBoard } from './NewBoard.tsx';
import { OpenLink } from './OpenLink.tsx';
import { useImport } from './use-import.ts';

/** The start page: what this is, make a board from nothing, a picture or a file, or open a link. */
export function Home(props: HomeProps) {
  const importing = useImport(props);
  const { step } = importing;
  const [pictures, setPictures] = useState<readonly File[]>([]);
  const take = useSteady(async (files: readonly File[]) => {
    const sorted = await (await import('../images/dropped-files.ts')).sortFiles(files);
    const ofTheLand = [...sorted.pictures, ...sorted.worldFiles];
    if (ofTheLand.length > 0) setPictures([...pictures, ...ofTheLand]);
    if (sorted.others.length > 0 || files.length === 0) importing.dropFiles(sorted.others);
  });
  usePastedFiles(take);
  return (
    <main className="home">
      <header className="home__head">
        <h1 className="home__title">Loopwright</h1>
        <p className="home__lead">
          A shared board for routing a golf course. Drag tees, turn points and greens together; everyone sees at once
          what each move does to lengths, walks, clearances and the round.
        </p>
      </header>
      <div className="home__sheet">
        {step.at === 'waiting' && <NewBoard {...props} files={pictures} onFiles={setPictures} />}
        {step.at === 'waiting' && (
          <section className="home__part home__part--next" aria-labelledby="home-file">
            <h2 id="home-file" className="home__heading">
              A course you have
            </h2>
            <DropField onFiles={take} />
          </section>
        )}
        <ImportSheet importing={importing} />
        {step.at === 'waiting' && (
          <div className="home__ways">
            <OpenLink openLink={props.openLink} />
          </div>
        )}
      </div>
      <p className="caution home__caution">
        Loopwright screens a plan, it does not certify one. Safety figures are shown with their source; a qualified
        designer, a study of the site and local codes decide.
      </p>
    </main>
  );
}
