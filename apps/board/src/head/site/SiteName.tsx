import { lazy, memo, Suspense, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { HeadProps } from '../../board/parts.ts';

const SiteSheet = lazy(() => import('./SiteSheet.tsx').then((sheet) => ({ default: sheet.SiteSheet })));

type SiteNameProps = Pick<HeadProps, 'siteName' | 'siteNote' | 'siteUnits' | 'edit'>;

/** The site's name; a press opens its name, note and units. However long and in whatever script, it keeps its place. */
export const SiteName = memo(function SiteName({ siteName, siteNote = '', siteUnits, edit }: SiteNameProps) {
  const [open, setOpen] = useState(false);
  const site = useMemo(
    () => ({ name: siteName, note: siteNote, units: siteUnits ?? 'yards' }),
    [siteName, siteNote, siteUnits],
  );
  return (
    <>
      <h1 className="head__site" title={siteName}>
        <Button className="head__site-button" onPress={() => setOpen(true)} aria-haspopup="dialog">
          <bdi>{siteName}</bdi>
        </Button>
      </h1>
      {open && (
        <Suspense fallback={null}>
          <SiteSheet site={site} edit={edit} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
});
