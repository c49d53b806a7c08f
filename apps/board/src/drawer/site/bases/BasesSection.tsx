import { LIMITS } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { useSteady } from '../../../reading/use-steady.ts';
import { ThingRow } from '../land/ThingRow.tsx';
import { BaseFields } from './BaseFields.tsx';

/** Where golfers gather: several candidates may stand beside each other until one is taken. */
export function BasesSection(props: DrawerProps) {
  const { plan, selection, select, goTo, take } = props;
  const { bases } = plan.site;
  const chosen = selection.thing?.kind === 'base' ? selection.thing.id : undefined;
  const choose = useSteady((id: string) => {
    const base = bases.find((one) => one.id === id);
    if (!base || chosen === id) return select({});
    select({ thing: { kind: 'base', id } });
    return goTo({ kind: 'point', at: base.apron });
  });
  return (
    <>
      {bases.length === 0 && (
        <p className="empty">
          <strong>No base yet.</strong> Put one where golfers would gather: walks to the first tee and from the last
          green are measured from there.
        </p>
      )}
      <ul className="things">
        {bases.map((base) => (
          <ThingRow
            key={base.id}
            id={base.id}
            title={base.name}
            what={footprintWords(base.footprints.length)}
            chosen={base.id === chosen}
            onChoose={choose}
          >
            <BaseFields {...props} base={base} />
          </ThingRow>
        ))}
      </ul>
      <Button
        className="button button--small"
        isDisabled={bases.length >= LIMITS.bases}
        onPress={() => {
          select({});
          take('base');
        }}
      >
        Place a base
      </Button>
    </>
  );
}

const footprintWords = (count: number) =>
  count === 0 ? 'no footprint' : count === 1 ? '1 footprint' : `${count} footprints`;
