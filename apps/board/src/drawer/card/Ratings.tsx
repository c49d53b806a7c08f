import type { RatingRow } from './ratings-view.ts';
import { RATING_CAUTION } from './ratings-view.ts';

/** The provisional length rating of a round, with its caution. */
export function Ratings({ rows }: { readonly rows: readonly RatingRow[] }) {
  if (rows.length === 0) return null;
  return (
    <section aria-label="Length rating, provisional">
      <table className="table">
        <caption>Length rating, provisional</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              tees
            </th>
            <th scope="col" className="table__words">
              for
            </th>
            <th scope="col">scratch</th>
            <th scope="col">bogey</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.teeSet}</th>
              <td className="table__words">{row.sex}</td>
              <td>{row.scratch}</td>
              <td>{row.bogey}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="caution">{RATING_CAUTION}</p>
    </section>
  );
}
