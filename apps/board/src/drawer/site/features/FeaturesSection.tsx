import { useMemo, useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { useSteady } from '../../../reading/use-steady.ts';
import { ThingRow } from '../land/ThingRow.tsx';
import { FeatureFields } from './FeatureFields.tsx';
import { type FeatureGroup, featureGroups, middleOf } from './features-view.ts';

/** Rows of one kind shown at first: a mapped course has bunkers by the hundred. */
const AT_FIRST = 12;

/** What lies on the land, by kind; the one picked out opens in its place. */
export function FeaturesSection(props: DrawerProps) {
  const { plan, reading, selection, select, goTo, take, bringFeatures } = props;
  const [filter, setFilter] = useState('');
  const { features } = plan.site;
  const groups = useMemo(() => featureGroups(features, filter, reading.units), [features, filter, reading.units]);
  const chosen = selection.thing?.kind === 'feature' ? selection.thing.id : undefined;
  const choose = useSteady((id: string) => {
    const feature = features.find((one) => one.id === id);
    if (!feature || chosen === id) return select({});
    select({ thing: { kind: 'feature', id } });
    return goTo({ kind: 'point', at: middleOf(feature.geometry) });
  });
  return (
    <>
      {features.length === 0 ? (
        <p className="empty">
          <strong>Nothing on the land yet.</strong> Draw water, trees, roads and protected ground, or bring them in from
          a GeoJSON file: then walks, corridors and greens that touch them are noticed.
        </p>
      ) : (
        <label className="field">
          <span className="field__label">Find by name, kind or authority</span>
          <input className="input" type="search" value={filter} onChange={({ target }) => setFilter(target.value)} />
        </label>
      )}
      {features.length > 0 && groups.length === 0 && <p className="small soft">No feature says ‘{filter}’.</p>}
      {groups.map((group) => (
        <Group key={group.kind} group={group} chosen={chosen} onChoose={choose} board={props} />
      ))}
      <div className="row">
        <Button className="button button--small" onPress={() => take('feature')}>
          Draw a feature
        </Button>
        {bringFeatures && (
          <FileTrigger
            acceptedFileTypes={['.geojson', '.json', 'application/geo+json', 'application/json']}
            onSelect={(files) => {
              const file = files?.[0];
              if (file) bringFeatures(file);
            }}
          >
            <Button className="button button--small">Bring in a GeoJSON file …</Button>
          </FileTrigger>
        )}
      </div>
    </>
  );
}

interface GroupProps {
  readonly group: FeatureGroup;
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  readonly board: DrawerProps;
}

function Group({ group, chosen, onChoose, board }: GroupProps) {
  const { kind, rows } = group;
  const [most, setMost] = useState(AT_FIRST);
  const place = rows.findIndex(({ id }) => id === chosen);
  const shown = rows.slice(0, Math.max(most, place + 1));
  return (
    <section aria-label={kind}>
      <h4 className="things__kind">
        {kind} <span className="soft">{rows.length}</span>
      </h4>
      <ul className="things">
        {shown.map((row) => (
          <ThingRow key={row.id} {...row} chosen={row.id === chosen} onChoose={onChoose}>
            <FeatureFields {...board} id={row.id} />
          </ThingRow>
        ))}
      </ul>
      {shown.length < rows.length && (
        <Button className="button button--small button--quiet" onPress={() => setMost(shown.length + 10 * AT_FIRST)}>
          Show more of {kind} ({rows.length - shown.length})
        </Button>
      )}
    </section>
  );
}
