import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { DrawHoleOptions } from './draw-hole-options.ts';
import type { PlaceChoice } from './seat-for.ts';

const TYPED = [
  { key: 'leg', words: 'of the leg' },
  { key: 'whole', words: 'of the hole' },
] as const;
const FIRST = [
  { key: 'tee', words: 'Tee first' },
  { key: 'green', words: 'Green first' },
] as const;
const NEXT = {
  tee: [
    { key: 'turn', words: 'Next: turn' },
    { key: 'end', words: 'Next: green' },
  ],
  green: [
    { key: 'turn', words: 'Next: turn' },
    { key: 'end', words: 'Next: tee' },
  ],
} as const;

/** What may be chosen while a hole is drawn. */
export function DrawHoleStrip({ options }: { readonly options: DrawHoleOptions }) {
  const first = useWatched(options.first);
  const next = useWatched(options.next);
  const typedOf = useWatched(options.typedOf);
  return (
    <>
      <Choices label="A typed length is" choices={TYPED} chosen={typedOf} onChoose={options.typedOf.set} />
      <Choices label="The next point" choices={NEXT[first]} chosen={next} onChoose={options.next.set} />
      <Choices label="Drawn from" choices={FIRST} chosen={first} onChoose={options.first.set} />
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
