/** In the place of findings while one press has hidden them all. */
export function FindingsHidden() {
  return (
    <p className="empty">
      <strong>Findings are hidden.</strong> Press H, or ‘Hide findings’ in the head once more, to see them again.
    </p>
  );
}
