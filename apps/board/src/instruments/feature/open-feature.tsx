import { FEATURE_KINDS } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { allowsWords } from '../../reading/allows-words.ts';
import { Choices } from '../../style/Choices.tsx';
import type { InstrumentEntry } from '../instrument-entry.ts';
import type { OutlineRunning } from '../outline/start-outline.ts';
import { chooseKind, type FeatureChoice, openFeatureChoice } from './feature-choice.ts';
import { startFeature } from './start-feature.ts';

/** Draws what stands on the land: water, trees, roads, what is protected. */
export function openFeature(): InstrumentEntry {
  const choice = openFeatureChoice();
  const running = openSlot<OutlineRunning | undefined>(undefined);
  const onChoice = () => running.get()?.refresh();
  const options = () => <FeatureOptions choice={choice} onChoice={onChoice} />;
  return {
    instrument: {
      name: 'feature',
      title: 'Feature',
      does: 'Water, trees, roads, protected ground: area, line or point, with what it allows.',
      start: (bench) => {
        const started = startFeature(bench, choice);
        running.set(started);
        return started;
      },
    },
    Options: options,
  };
}

const FORMS = [
  { key: 'area', words: 'Area' },
  { key: 'line', words: 'Line' },
  { key: 'point', words: 'Point' },
] as const;

interface FeatureOptionsProps {
  readonly choice: FeatureChoice;
  readonly onChoice: () => void;
}

function FeatureOptions({ choice, onChoice }: FeatureOptionsProps) {
  const kind = useWatched(choice.kind);
  const form = useWatched(choice.form);
  return (
    <>
      <label className="strip__field">
        <span>Kind</span>
        <select
          className="input"
          value={kind}
          onChange={({ target }) => {
            const next = FEATURE_KINDS.find((each) => each === target.value);
            if (next) chooseKind(choice, next);
            onChoice();
          }}
        >
          {FEATURE_KINDS.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </label>
      <Choices
        label="Drawn as"
        choices={FORMS}
        chosen={form}
        onChoose={(next) => {
          choice.form.set(next);
          onChoice();
        }}
      />
      <span className="small soft">{allowsWords(kind)}</span>
    </>
  );
}
