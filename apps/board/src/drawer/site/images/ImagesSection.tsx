import './images-section.css';
import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { PICTURE_TYPES } from '../../../images/picture-types.ts';
import { Fold } from '../../../style/Fold.tsx';
import { ImageRowView } from './ImageRowView.tsx';
import { imageRows } from './images-view.ts';

/** The pictures under the plan, the uppermost first: their size, how it is known, and what can be done with each. */
export function ImagesSection({ plan, reading, selection, select, edit, preview, take, imports }: DrawerProps) {
  const [open, setOpen] = useState(true);
  const { images } = plan.site;
  const chosen = selection.thing?.kind === 'image' ? selection.thing.id : undefined;
  return (
    <Fold title="Pictures" count={String(images.length)} open={open} onToggle={() => setOpen(!open)}>
      {images.length === 0 && (
        <p className="empty">
          <strong>No picture yet.</strong> Drop a plan or an aerial of the site on the board, or paste one: PNG, JPEG or
          WebP, with its world file if it has one.
        </p>
      )}
      <ul className="images">
        {imageRows(images, reading.units).map((row) => {
          const image = images.find(({ id }) => id === row.id);
          return image ? (
            <ImageRowView
              key={row.id}
              row={row}
              image={image}
              chosen={row.id === chosen}
              {...{ select, edit, preview, take }}
              replace={(file) => imports?.replace(row.id, file)}
            />
          ) : null;
        })}
      </ul>
      {imports && (
        <FileTrigger
          allowsMultiple
          acceptedFileTypes={PICTURE_TYPES}
          onSelect={(files) => {
            if (files) imports.add([...files]);
          }}
        >
          <Button className="button button--small">Add a picture …</Button>
        </FileTrigger>
      )}
    </Fold>
  );
}
