import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { DrawHoleOptions } from './draw-hole-options.ts';
import type { PlaceChoice } from './seat-for.ts';

const FIRST = [
  { key: 'tee', words: 'Tee first' },
  { key: 'green', words: 'Green first' },
] as const;
const TYPED = [
  { key: 'leg', words: 'Leg' },
  { key: 'whole', words: 'Hole' },
] as const;

/** What may be chosen while a hole is drawn. */
export function DrawHoleStrip({ options }: { readonly options: DrawHoleOptions }) {
  const first = useWatched(options.first);
  const next = useWatched(options.next);
  const typedOf = useWatched(options.typedOf);
  const end = first === 'tee' ? 'green' : 'tee';
  return (
    <>
      <Choices label="Drawn from" choices={FIRST} chosen={first} onChoose={options.first.set} />
      <Choices
        label="The next point is"
        choices={[
          { key: 'turn', words: 'Next: turn' },
          { key: 'end', words: `Next: ${end}` },
        ]}
        chosen={next}
        onChoose={options.next.set}
      />
      <Choices
        label="A length that is typed is of the"
        choices={TYPED}
        chosen={typedOf}
        onChoose={options.typedOf.set}
      />
      <PlaceField options={options} />
    </>
  );
}

const keyOf = (choice: PlaceChoice) => (choice.kind === 'after' ? `after ${choice.hole}` : choice.kind);

/** Where in the round the hole goes. */
function PlaceField({ options }: { readonly options: DrawHoleOptions }) {
  const place = useWatched(options.place);
  const places = useWatched(options.places);
  return (
    <label className="strip__field">
      <span>Takes</span>
      <select
        className="input"
        value={keyOf(place)}
        onChange={({ target }) => {
          const chosen = places.find(({ choice }) => keyOf(choice) === target.value);
          if (chosen) options.place.set(chosen.choice);
        }}
      >
        {places.map(({ choice, words }) => (
          <option key={keyOf(choice)} value={keyOf(choice)}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
