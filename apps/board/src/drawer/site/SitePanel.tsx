import './site.css';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { DrawerProps, SiteThing } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { useArrival } from '../use-arrival.ts';
import { BasesSection } from './bases/BasesSection.tsx';
import { BoundarySection } from './boundary/BoundarySection.tsx';
import { ownArea } from './boundary/boundary-view.ts';
import { FeaturesSection } from './features/FeaturesSection.tsx';
import { ImagesSection } from './images/ImagesSection.tsx';
import { SiteWords } from './land/SiteWords.tsx';
import { MarksSection } from './marks/MarksSection.tsx';
import { SketchesSection } from './sketches/SketchesSection.tsx';

/** Everything known of the land, readable and changeable by keyboard; what is picked out on the drawing opens here. */
export function SitePanel(props: DrawerProps) {
  const { thing } = props.selection;
  const { boundary, bases, features, marks } = props.plan.site;
  const fold = { chosen: thing?.kind } as const;
  return (
    <>
      <h2 className="only-heard">The site</h2>
      <SiteFold title="Site" starts="closed" count={props.plan.site.name} {...fold}>
        <SiteWords {...props} />
      </SiteFold>
      <ImagesSection {...props} />
      <SiteFold
        title="Boundary"
        opensFor="boundary"
        starts="closed"
        count={boundary ? ownArea(boundary, props.reading.units) : 'none'}
        {...fold}
      >
        <BoundarySection {...props} />
      </SiteFold>
      <SiteFold title="Bases" opensFor="base" starts="closed" count={String(bases.length)} {...fold}>
        <BasesSection {...props} />
      </SiteFold>
      <SiteFold title="Features" opensFor="feature" starts="closed" count={String(features.length)} {...fold}>
        <FeaturesSection {...props} />
      </SiteFold>
      <SiteFold title="Site marks" opensFor="mark" starts="closed" count={String(marks.length)} {...fold}>
        <MarksSection {...props} />
      </SiteFold>
      <SketchesSection {...props} />
    </>
  );
}

interface SiteFoldProps {
  readonly title: string;
  readonly count: string;
  readonly starts: 'open' | 'closed';
  /** Opens by itself when such a thing is picked out. */
  readonly opensFor?: SiteThing['kind'];
  readonly chosen: SiteThing['kind'] | undefined;
  readonly children: ReactNode;
}

function SiteFold({ title, count, starts, opensFor, chosen, children }: SiteFoldProps) {
  const isChosen = opensFor !== undefined && chosen === opensFor;
  const [open, setOpen] = useState(starts === 'open' || isChosen);
  const section = useRef<HTMLDivElement>(null);
  useArrival(section, isChosen);
  useEffect(() => {
    if (isChosen) setOpen(true);
  }, [isChosen]);
  return (
    <Fold title={title} {...(count ? { count } : {})} open={open} onToggle={() => setOpen(!open)}>
      <div ref={section} tabIndex={-1} className="site-section">
        {children}
      </div>
    </Fold>
  );
}
