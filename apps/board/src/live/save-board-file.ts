import type { Plan } from '@loopwright/model';
import { download, fileNameOf } from './download.ts';

/** Hands the person a plan as a board file. The writer is fetched only now: most visits need none. */
export async function saveBoardFile(plan: Plan, ending = 'loopwright.json'): Promise<void> {
  const { writeBoardFile } = await import('@loopwright/formats');
  download(fileNameOf(plan.site.name, ending), writeBoardFile(plan), 'application/json');
}
