import type { Plan } from '@loopwright/model';
import { download, fileNameOf } from './download.ts';

/** Hands the person the board as a file. The writer is fetched only now: most visits need none. */
export async function saveBoardFile(plan: Plan): Promise<void> {
  const { writeBoardFile } = await import('@loopwright/formats');
  download(fileNameOf(plan.site.name, 'loopwright.json'), writeBoardFile(plan), 'application/json');
}
