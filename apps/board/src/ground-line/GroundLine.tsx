/** The place of the height profile along the bottom. A board without ground says so instead of drawing a flat line. */
export function GroundLine() {
  return (
    <section className="ground-line" aria-label="The ground line">
      <h2 className="ground-line__title">The ground line</h2>
      <p className="ground-line__empty">No ground yet: climbs and sightlines are not worked out on this board.</p>
    </section>
  );
}
