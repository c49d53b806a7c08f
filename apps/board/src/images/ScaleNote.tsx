import './images.css';
import type { ImageLayer } from '@loopwright/model';
import { Button } from 'react-aria-components';
import { unscaled } from './unscaled.ts';

interface ScaleNoteProps {
  readonly images: readonly ImageLayer[];
  /** Takes the instrument that scales a picture. */
  readonly onScale: () => void;
}

/** Says that the picture under the plan has no known scale, for as long as that is so: no length on it can be trusted. */
export function ScaleNote({ images, onScale }: ScaleNoteProps) {
  const [first] = unscaled(images);
  if (!first) return null;
  const name = first.name ?? 'The picture';
  return (
    <aside className="scale-note" aria-label="Not to scale yet">
      <p>
        <strong>Not to scale yet.</strong> {name} lies at a guessed size: lengths, walks and clearances read off it are
        guesses too. Give a known distance before you trust any.
      </p>
      <Button className="button button--small button--main" onPress={onScale}>
        Give a known distance
      </Button>
    </aside>
  );
}
