import type { DrawerProps, SiteThing } from '../../../board/parts.ts';
import { type OutlineShown, outlinesOf } from '../../../tools/land/outlines-of.ts';
import { VerticesTable } from './VerticesTable.tsx';

type VerticesOfProps = Pick<DrawerProps, 'plan' | 'selection' | 'select' | 'goTo' | 'edit' | 'say'> & {
  readonly thing: SiteThing;
};

/** The vertices of all outlines of a thing. */
export function VerticesOf({ plan, thing, ...hands }: VerticesOfProps) {
  const outlines = outlinesOf(plan.site, thing);
  return (
    <div className="outlines">
      {outlines.map((shown, index) => (
        <VerticesTable
          key={JSON.stringify(shown.outline)}
          title={titleOf(shown, index, outlines.length)}
          site={plan.site}
          shown={shown}
          {...hands}
        />
      ))}
    </div>
  );
}

function titleOf({ outline, isClosed }: OutlineShown, index: number, count: number): string {
  switch (outline.of) {
    case 'boundary':
      return outline.part === 'inner'
        ? `Someone else’s land inside ${outline.ring + 1}`
        : `Outline ${outline.ring + 1}`;
    case 'base':
      return `Footprint ${outline.ring + 1}`;
    default:
      if (!isClosed) return 'Line';
      return count > 1 && index > 0 ? `Cut out ${index}` : 'Outline';
  }
}
