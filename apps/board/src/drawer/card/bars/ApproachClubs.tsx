import { memo } from 'react';
import { saysTheSame } from '../../../reading/steady.ts';
import type { ClubHoles } from './approach-clubs.ts';

interface ApproachClubsProps {
  readonly clubs: readonly ClubHoles[];
  readonly player: string;
}

/** The clubs into the greens: a row each, a box for every hole that asks for it. */
export function ApproachClubs({ clubs, player }: ApproachClubsProps) {
  return (
    <section className="bars" aria-label="Clubs into the greens">
      <h3 className="bars__title">Clubs into the greens</h3>
      <ol className="clubs">
        {clubs.map((club) => (
          <ClubRow key={club.club} {...club} />
        ))}
      </ol>
      <p className="small soft">The {player}, after full shots, on the level. Numbers are holes.</p>
    </section>
  );
}

const ClubRow = memo(function ClubRow({ club, holes }: ClubHoles) {
  return (
    <li className="clubs__row">
      <span className="clubs__club">{club}</span>
      <span className="clubs__holes">
        {holes.length === 0 && <span className="only-heard">no hole</span>}
        {holes.map((number) => (
          <span key={number} className="clubs__hole">
            {number}
          </span>
        ))}
      </span>
    </li>
  );
}, saysTheSame);
