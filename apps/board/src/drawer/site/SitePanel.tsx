import type { DrawerProps } from '../../board/parts.ts';
import { ImagesSection } from './images/ImagesSection.tsx';
import { SketchesSection } from './sketches/SketchesSection.tsx';

/** What is known of the land. */
export function SitePanel(props: DrawerProps) {
  return (
    <>
      <h2>{props.plan.site.name}</h2>
      <ImagesSection {...props} />
      <SketchesSection {...props} />
    </>
  );
}
