import { namesOf } from '../../reading/names.ts';
import { editFor, placeOf, placesFor, samePlace } from '../../round/bead-moves.ts';
import { placeWords } from '../../round/bead-words.ts';
import type { SectionProps } from './hole-sheet.ts';

/** Where the hole is played: after another one, first on a loop, or out of the round. */
export function PlaceInRound({ plan, routing, hole, reading, edit, number }: SectionProps) {
  const names = namesOf(plan, routing, reading.units);
  const places = placesFor(routing, [hole.id]);
  const now = placeOf(routing, hole.id);
  return (
    <label className="field">
      <span className="field__label">Place in the round</span>
      <select
        className="input"
        aria-label={`Place of hole ${number} in the round`}
        value={places.findIndex((place) => samePlace(place, now))}
        disabled={routing.locked}
        onChange={(event) => {
          const place = places[Number(event.target.value)];
          const moved = place && editFor(routing, hole.id, place);
          if (moved) edit(moved);
        }}
      >
        {places.map((place, index) => (
          <option key={placeWords(place, names)} value={index}>
            {placeWords(place, names)}
          </option>
        ))}
      </select>
    </label>
  );
}
