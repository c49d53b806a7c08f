import type { HomeProps } from '../board/parts.ts';
import { DropField } from './DropField.tsx';
import { EmptyBoard } from './EmptyBoard.tsx';
import { ImportSheet } from './ImportSheet.tsx';
import { OpenLink } from './OpenLink.tsx';
import { useImport } from './use-import.ts';

/** The start page: what this is, open a link, make a board from a file or an empty one. */
export function Home(props: HomeProps) {
  const importing = useImport(props);
  const { step } = importing;
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
        {step.at === 'waiting' && (
          <section className="home__part" aria-labelledby="home-file">
            <h2 id="home-file" className="home__heading">
              A course you have
            </h2>
            <DropField onFiles={importing.dropFiles} />
          </section>
        )}
        <ImportSheet importing={importing} />
        {step.at === 'waiting' && (
          <div className="home__ways">
            <OpenLink openLink={props.openLink} />
            <EmptyBoard {...props} />
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
