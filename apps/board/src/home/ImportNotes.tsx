import type { ReadNote } from './course-reader/contract.ts';

/** What was noticed while a file was taken in: nothing is dropped silently. */
export function ImportNotes({ notes }: { readonly notes: readonly ReadNote[] }) {
  if (notes.length === 0) return <p className="small soft">Taken in whole: nothing had to be guessed or left out.</p>;
  return (
    <section aria-label="Import notes">
      <h3 className="import__notes-title">
        {notes.length} {notes.length === 1 ? 'thing' : 'things'} noticed while taking it in
      </h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must be reachable by keys */}
      <ul className="import__notes" tabIndex={0} aria-label="Import notes">
        {notes.map(({ what, about }) => (
          <li key={`${about} ${what}`} className="import__note">
            {about && <b>{about}: </b>}
            {what}
          </li>
        ))}
      </ul>
    </section>
  );
}
