import type { NamedEdit } from '@loopwright/document';
import { type Plan, pointToMillimetre, type SitePoint } from '@loopwright/model';
import { middleOf, placedAfter, turnedAbout } from '../../images/placement.ts';

/** What finding north does: pictures that nothing was drawn over yet are turned, later the arrow alone. */
export interface FoundNorth {
  readonly edit: NamedEdit;
  readonly turns: 'the pictures' | 'the arrow';
}

/**
 * Before anything is drawn the pictures are turned until north is up, as on any plan: bearings, compass words and the
 * rose count from there. Over what is drawn, and over pictures that lie on a survey grid, only the arrow turns.
 *
 * @param north  radians clockwise from the top of the paper
 * @param about  what stays where it is; without it the middle of the lowest picture
 */
export function northFound(plan: Plan, north: number, about: SitePoint | undefined): FoundNorth {
  const [lowest] = plan.site.images;
  if (!lowest || !isBare(plan)) return { edit: { edit: 'set north', north }, turns: 'the arrow' };
  const turn = turnedAbout(pointToMillimetre(about ?? middleOf(lowest)), (-north * 180) / Math.PI);
  const turned = plan.site.images.map(
    ({ id, placement }): NamedEdit => ({
      edit: 'change image',
      image: id,
      to: { placement: placedAfter(placement, turn) },
    }),
  );
  const edits: NamedEdit[] = [{ edit: 'set north', north: 0 }, ...turned];
  return { edit: { edit: 'several', does: 'turning of the pictures to north', edits }, turns: 'the pictures' };
}

/** Whether nothing but pictures, none of them on a survey grid, lies on the land. */
function isBare({ site, routings }: Plan): boolean {
  const drawn = [site.bases, site.marks, site.features, site.sketches ?? []].some(({ length }) => length > 0);
  const isSurveyed = site.images.some(({ scaledBy }) => scaledBy !== 'guess' && scaledBy !== 'two points');
  const laid = routings.some(({ holes }) => holes.some(({ seat }) => seat.in !== 'removed'));
  return !drawn && !laid && !isSurveyed && !site.boundary && !site.location && !site.grid;
}
