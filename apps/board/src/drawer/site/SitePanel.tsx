import type { DrawerProps } from '../../board/parts.ts';

/** What is known of the land. */
export function SitePanel({ plan }: DrawerProps) {
  return <h2>{plan.site.name}</h2>;
}
