import { type Base, LIMITS } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { CommitField } from '../../../style/CommitField.tsx';
import { takeName } from '../../../style/name-rule.ts';
import { TextLine } from '../../hole/TextLine.tsx';
import { PlaceFields } from '../land/PlaceFields.tsx';
import { VerticesOf } from '../vertices/VerticesOf.tsx';

/** Everything about one base: name, note, apron, footprints. */
export function BaseFields({ base, ...props }: DrawerProps & { readonly base: Base }) {
  const { edit, select, take } = props;
  const { id, name, note = '', apron, footprints } = base;
  return (
    <>
      <div className="field">
        <span className="field__label">Name</span>
        <CommitField
          label="Name of the base"
          value={name}
          maxLength={LIMITS.name}
          onCommit={(typed) => takeName(typed, (next) => edit({ edit: 'change base', base: id, to: { name: next } }))}
        />
      </div>
      <TextLine
        label="Note"
        text={note}
        most={LIMITS.note}
        lines="several"
        disabled={false}
        onText={(words) => edit({ edit: 'change base', base: id, to: { note: words.trim() || null } })}
      />
      <PlaceFields
        of="Apron"
        at={apron}
        edit={edit}
        editFor={(at) => ({ edit: 'change base', base: id, to: { apron: at } })}
      />
      <VerticesOf {...props} thing={{ kind: 'base', id }} />
      <div className="row">
        <Button
          className="button button--small"
          isDisabled={footprints.length >= LIMITS.footprints}
          onPress={() => {
            select({ thing: { kind: 'base', id } });
            take('base');
          }}
        >
          Draw a footprint
        </Button>
        {footprints.map((ring, index) => (
          <Button
            key={`${ring[0]?.x} ${ring[0]?.y} ${ring.length}`}
            className="button button--small"
            onPress={() => edit({ edit: 'change base', base: id, to: { footprints: footprints.toSpliced(index, 1) } })}
          >
            Remove footprint {index + 1}
          </Button>
        ))}
        <Button
          className="button button--small"
          onPress={() => {
            edit({ edit: 'remove base', base: id });
            select({});
          }}
        >
          Remove the base
        </Button>
      </div>
    </>
  );
}
