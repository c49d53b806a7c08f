import type { RefObject } from 'react';
import { BadgeLines } from '../drawing/BadgeLines.tsx';
import type { HandPreview } from './hand-preview.ts';

interface HandPreviewCardProps {
  readonly preview: HandPreview;
  readonly card: RefObject<HTMLDivElement | null>;
}

/** Beside the beads in hand: what putting them down here does to walks and nines, at worst and at best. */
export function HandPreviewCard({ preview, card }: HandPreviewCardProps) {
  return (
    <div className="hand-preview" ref={card} aria-hidden="true">
      <p className="hand-preview__title">{preview.title}</p>
      <table className="table">
        <thead>
          <tr>
            <th scope="col" className="table__words">
              {preview.unit}
            </th>
            <th scope="col">before</th>
            <th scope="col">then</th>
          </tr>
        </thead>
        <tbody>
          {preview.rows.map(({ key, what, before, after, change }) => (
            <tr key={key}>
              <th scope="row">
                <bdi className="hand-preview__what">{what}</bdi>
              </th>
              <td>{before}</td>
              <td>
                {after} <b>{change}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {preview.worst.length > 0 && (
        <ul className="round__worst">
          <BadgeLines lines={preview.worst} />
        </ul>
      )}
    </div>
  );
}
