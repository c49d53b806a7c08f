import { LIMITS, type SiteMark } from '@loopwright/model';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { Choices } from '../../../style/Choices.tsx';
import { TextLine } from '../../hole/TextLine.tsx';
import { PlaceFields } from '../land/PlaceFields.tsx';
import { KIND_WORDS, KINDS, type MarkRow } from './marks-view.ts';

const VERDICTS = [
  { key: 'natural', words: 'Natural' },
  { key: 'needs work', words: 'Needs work' },
] as const satisfies readonly { readonly key: SiteMark['verdict']; readonly words: string }[];
const KIND_CHOICES = KINDS.map((key) => ({ key, words: KIND_WORDS[key] }));

/** Everything about one mark: what it is, its verdict and note, its place, and the holes that have taken it up. */
export function MarkFields({ row, plan, routing, edit, select, goTo }: DrawerProps & { readonly row: MarkRow }) {
  const mark = plan.site.marks.find(({ id }) => id === row.id);
  if (!mark) return null;
  const change = (to: Partial<Omit<SiteMark, 'id'>> & { readonly note?: string }) =>
    edit({ edit: 'change mark', mark: mark.id, to });
  return (
    <>
      <Choices label="What was found" choices={KIND_CHOICES} chosen={mark.kind} onChoose={(kind) => change({ kind })} />
      <Choices label="Verdict" choices={VERDICTS} chosen={mark.verdict} onChoose={(verdict) => change({ verdict })} />
      <TextLine
        label="Note"
        text={mark.note ?? ''}
        most={LIMITS.note}
        lines="several"
        disabled={false}
        onText={(words) => edit({ edit: 'change mark', mark: mark.id, to: { note: words.trim() || null } })}
      />
      <PlaceFields
        of="Mark"
        at={mark.at}
        edit={edit}
        editFor={(at) => ({ edit: 'change mark', mark: mark.id, to: { at } })}
      />
      {row.uses.length > 0 && (
        <ul className="thing__uses">
          {row.uses.map((use) => (
            <li key={`${use.routing} ${use.hole}`}>
              {use.words}{' '}
              {use.routing === routing.id && (
                <Button
                  className="button button--small"
                  aria-label={`Go to ${use.words}`}
                  onPress={() => {
                    select({ hole: use.hole });
                    goTo({ kind: 'hole', hole: use.hole });
                  }}
                >
                  Go to it
                </Button>
              )}
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <Button className="button button--small" onPress={() => goTo({ kind: 'point', at: mark.at })}>
          Show it
        </Button>
        <Button
          className="button button--small"
          onPress={() => {
            edit({ edit: 'remove mark', mark: mark.id });
            select({});
          }}
        >
          Remove the mark
        </Button>
      </div>
    </>
  );
}
