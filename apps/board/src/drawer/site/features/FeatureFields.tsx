import { FEATURE_KINDS, type Feature, type FeatureKind, LIMITS } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { ALLOWS, allowMeans } from '../../../reading/allows-words.ts';
import { toField, unitSymbol } from '../../../reading/lengths.ts';
import { TextLine } from '../../hole/TextLine.tsx';
import { TypedField } from '../../typed/TypedField.tsx';
import { lengthAnswer } from '../../typed/typed-answer.ts';
import { VerticesOf } from '../vertices/VerticesOf.tsx';
import { changedKind, middleOf, sizeWords } from './features-view.ts';

type OneFeature = Pick<DrawerProps, 'edit' | 'reading'> & { readonly feature: Feature };

/** Everything about one feature: what it is and allows, whose line it is, what is kept around it, where it lies. */
export function FeatureFields({ id, ...board }: DrawerProps & { readonly id: string }) {
  const { plan, reading, edit, select, goTo } = board;
  const feature = plan.site.features.find((one) => one.id === id);
  if (!feature) return null;
  const change = (to: Parameters<typeof changeOf>[1]) => edit(changeOf(feature, to));
  const text = (label: string, field: 'name' | 'authority' | 'note', lines: 'one' | 'several') => (
    <TextLine
      label={label}
      text={feature[field] ?? ''}
      most={field === 'note' ? LIMITS.note : LIMITS.name}
      lines={lines}
      disabled={false}
      onText={(words) => change({ [field]: words.trim() || null })}
    />
  );
  return (
    <>
      {text('Name', 'name', 'one')}
      <div className="site-figures">
        <KindField feature={feature} reading={reading} edit={edit} />
        <p className="site-figures__said small soft">{sizeWords(feature.geometry, reading.units)}</p>
      </div>
      <AllowsFields feature={feature} reading={reading} edit={edit} />
      <Figures feature={feature} reading={reading} edit={edit} />
      {text('Whose line it is', 'authority', 'one')}
      {text('Note', 'note', 'several')}
      <VerticesOf {...board} thing={{ kind: 'feature', id }} />
      <div className="row">
        <Button
          className="button button--small"
          onPress={() => goTo({ kind: 'point', at: middleOf(feature.geometry) })}
        >
          Show it
        </Button>
        <Button
          className="button button--small"
          onPress={() => {
            edit({ edit: 'remove features', features: [id] });
            select({});
          }}
        >
          Remove the feature
        </Button>
      </div>
    </>
  );
}

type FeatureTo = Extract<Parameters<DrawerProps['edit']>[0], { edit: 'change feature' }>['to'];

const changeOf = ({ id }: Feature, to: FeatureTo) => ({ edit: 'change feature', feature: id, to }) as const;

function KindField({ feature, edit }: OneFeature) {
  return (
    <label className="field">
      <span className="field__label">Kind</span>
      <select
        className="input"
        value={feature.kind}
        onChange={({ target }) => {
          const kind = FEATURE_KINDS.find((each) => each === target.value);
          if (kind) edit(changeOf(feature, changedKind(feature, kind)));
        }}
      >
        {FEATURE_KINDS.map((kind) => (
          <option key={kind}>{kind}</option>
        ))}
      </select>
    </label>
  );
}

/** What a golfer or the works may do there. */
function AllowsFields({ feature, edit }: OneFeature) {
  return (
    <fieldset className="allows">
      <legend className="field__label">It is allowed to</legend>
      {ALLOWS.map((what) => (
        <label key={what} className="allows__one">
          <input
            type="checkbox"
            checked={feature.allows[what]}
            onChange={({ target }) =>
              edit(changeOf(feature, { allows: { ...feature.allows, [what]: target.checked } }))
            }
          />
          {allowMeans(what)}
        </label>
      ))}
    </fieldset>
  );
}

const SEEN_FROM_AFAR: ReadonlySet<FeatureKind> = new Set(['landmark', 'trees', 'building', 'other']);

/** What is kept around it, and its height where that is seen from afar. */
function Figures({ feature, reading, edit }: OneFeature) {
  const { buffer, height } = feature;
  const { units } = reading;
  return (
    <div className="site-figures">
      <TypedField
        label="Distance kept around it"
        caption="Kept around it"
        shown={String(toField(buffer, units))}
        unit={unitSymbol(units)}
        answer={(typed) =>
          lengthAnswer(typed, buffer, units, { least: 0, most: LIMITS.buffer }, (metres) =>
            changeOf(feature, { buffer: metres }),
          )
        }
        edit={edit}
      />
      {(SEEN_FROM_AFAR.has(feature.kind) || height !== undefined) && (
        <TypedField
          label="Height above the ground; 0 when it is not known"
          caption="Height, 0 unknown"
          shown={String(toField(height ?? 0, units))}
          unit={unitSymbol(units)}
          answer={(typed) =>
            lengthAnswer(typed, height ?? 0, units, { least: 0, most: LIMITS.height }, (metres) =>
              changeOf(feature, { height: metres === 0 ? null : metres }),
            )
          }
          edit={edit}
        />
      )}
    </div>
  );
}
