import type { Hole } from '@loopwright/model';
import type { DrawerProps } from '../../board/parts.ts';

/** What every section of the sheet of one hole is given. */
export interface SectionProps extends Pick<DrawerProps, 'plan' | 'routing' | 'analysis' | 'reading' | 'edit'> {
  readonly hole: Hole;
  /** Its number, or what a spare hole goes by. */
  readonly number: string;
}
