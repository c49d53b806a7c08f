import { type LengthUnit, LIMITS, type Site } from '@loopwright/model';
import type { DrawerProps } from '../../../board/parts.ts';
import { bearingWords } from '../../../reading/directions.ts';
import { Choices } from '../../../style/Choices.tsx';
import { CommitField } from '../../../style/CommitField.tsx';
import { takeName } from '../../../style/name-rule.ts';
import { TextLine } from '../../hole/TextLine.tsx';
import { TypedField } from '../../typed/TypedField.tsx';
import { bearingAnswer } from '../../typed/typed-answer.ts';

const UNITS = [
  { key: 'yards', words: 'yards' },
  { key: 'metres', words: 'metres' },
] as const satisfies readonly { readonly key: LengthUnit; readonly words: string }[];

/** Name, note and units of the site, where north is, and where on Earth it lies. */
export function SiteWords({ plan, edit, take }: Pick<DrawerProps, 'plan' | 'edit' | 'take'>) {
  const { site } = plan;
  return (
    <>
      <div className="field">
        <span className="field__label">Name</span>
        <CommitField
          label="Name of the site"
          value={site.name}
          maxLength={LIMITS.name}
          onCommit={(typed) => takeName(typed, (name) => edit({ edit: 'name site', name }))}
        />
      </div>
      <TextLine
        label="Note, shown with the name"
        text={site.note ?? ''}
        most={LIMITS.note}
        lines="several"
        disabled={false}
        onText={(note) => edit({ edit: 'note site', note: note.trim() })}
      />
      <div className="field">
        <span className="field__label">People on this board begin in</span>
        <Choices
          label="People on this board begin in"
          choices={UNITS}
          chosen={site.units ?? 'yards'}
          onChoose={(units) => edit({ edit: 'set units', units })}
        />
      </div>
      <TypedField
        label="True north, degrees clockwise from the top of the drawing"
        caption="True north, clockwise from the top"
        shown={bearingWords(site.north)}
        answer={(typed) => bearingAnswer(typed, site.north, (north) => ({ edit: 'set north', north }))}
        edit={edit}
      />
      <p className="small soft">
        {placeWords(site)}{' '}
        <button type="button" className="link" onClick={() => take('north')}>
          Set north by a line
        </button>
      </p>
    </>
  );
}

/** Where the site lies, as far as anybody has said. */
function placeWords({ location, grid }: Site): string {
  if (location) {
    const north = `${Math.abs(location.latitude).toFixed(5)}° ${location.latitude < 0 ? 'S' : 'N'}`;
    const east = `${Math.abs(location.longitude).toFixed(5)}° ${location.longitude < 0 ? 'W' : 'E'}`;
    return `The origin lies at ${north}, ${east} (EPSG ${location.epsg}).`;
  }
  if (grid)
    return `The origin lies at ${grid.easting.toFixed(1)} east, ${grid.northing.toFixed(1)} north in a survey grid.`;
  return 'Where on Earth it lies is not known: a world file beside a picture, or a mapped course, says so.';
}
