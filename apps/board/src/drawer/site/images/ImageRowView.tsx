import { type ImageLayer, LIMITS } from '@loopwright/model';
import { useRef, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { CommitField } from '../../../style/CommitField.tsx';
import { takeName } from '../../../style/name-rule.ts';
import { SureSheet } from '../../../style/SureSheet.tsx';
import { useArrival } from '../../use-arrival.ts';
import { type ImageRow, turnEdit, typedDegrees } from './images-view.ts';
import { OpacitySlider } from './OpacitySlider.tsx';

interface ImageRowProps extends Pick<DrawerProps, 'select' | 'edit' | 'preview' | 'take'> {
  readonly row: ImageRow;
  readonly image: ImageLayer;
  readonly chosen: boolean;
  readonly replace: (file: File) => void;
}

/** One picture: its name, sizes and scale; opacity, place in the pile, turn; scale, replace, remove. */
export function ImageRowView({ row, image, chosen, select, edit, preview, take, replace }: ImageRowProps) {
  const { id, name } = row;
  const item = useRef<HTMLLIElement>(null);
  useArrival(item, chosen);
  const choose = () => select({ thing: { kind: 'image', id } });
  const turn = (typed: string) => {
    const degrees = typedDegrees(typed);
    if (degrees === undefined) return 'Type degrees clockwise, e.g. 12.5.';
    edit(turnEdit(image, degrees));
    return undefined;
  };
  return (
    <li ref={item} tabIndex={-1} className={`image${chosen ? ' image--chosen' : ''}`}>
      <CommitField
        label="Name of the picture"
        value={name}
        maxLength={LIMITS.name}
        onCommit={(typed) => takeName(typed, (next) => edit({ edit: 'change image', image: id, to: { name: next } }))}
      />
      <p className="small soft">
        {row.pixels}, {row.ground} on the ground
        <br />
        {row.isGuess ? <strong className="image__guess">{row.scale}</strong> : row.scale}
      </p>
      <OpacitySlider id={id} name={name} value={row.opacity} edit={edit} preview={preview} />
      <div className="image__turn small">
        <span aria-hidden="true">Turned clockwise</span>
        <CommitField label={`${name}: degrees turned clockwise`} value={`${row.turnedDegrees}°`} onCommit={turn} />
      </div>
      <div className="image__does">
        <Button
          className={`button button--small${row.isGuess ? ' button--main' : ''}`}
          aria-label={`Scale ${name}`}
          onPress={() => {
            choose();
            take('scale image');
          }}
        >
          Scale …
        </Button>
        <OrderButtons row={row} edit={edit} />
        <FileTrigger
          acceptedFileTypes={['image/png', 'image/jpeg', 'image/webp']}
          onSelect={(files) => {
            const file = files?.[0];
            if (file) replace(file);
          }}
        >
          <Button className="button button--small" aria-label={`Replace ${name}, keeping its place`}>
            Replace …
          </Button>
        </FileTrigger>
        <RemoveButton row={row} edit={edit} />
      </div>
    </li>
  );
}

function OrderButtons({ row: { id, name, up, down }, edit }: Pick<ImageRowProps, 'row' | 'edit'>) {
  return (
    <>
      <Button
        className="button button--small"
        aria-label={`Lay ${name} over the one above`}
        isDisabled={up === undefined}
        onPress={() => up !== undefined && edit({ edit: 'order image', image: id, after: up })}
      >
        <span aria-hidden="true">↑</span>
      </Button>
      <Button
        className="button button--small"
        aria-label={`Lay ${name} under the one below`}
        isDisabled={down === undefined}
        onPress={() => down !== undefined && edit({ edit: 'order image', image: id, after: down })}
      >
        <span aria-hidden="true">↓</span>
      </Button>
    </>
  );
}

function RemoveButton({ row: { id, name }, edit }: Pick<ImageRowProps, 'row' | 'edit'>) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <Button className="button button--small" aria-label={`Remove ${name}`} onPress={() => setAsking(true)}>
        Remove
      </Button>
      {asking && (
        <SureSheet
          title={`Remove ${name}?`}
          words="It goes off the board for everybody. What was drawn over it stays; undo brings it back."
          does="Remove it"
          onSure={() => edit({ edit: 'remove image', image: id })}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}
