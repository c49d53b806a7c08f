import { createPlanState, openRoom } from '@loopwright/document/server';
import type { Plan } from '@loopwright/model';
import type { ServerPorts } from '../ports.ts';
import { planRules } from '../rooms/rules.ts';

export interface MadeBoard {
  readonly board: string;
  /** Of its first link; shown once, never stored. */
  readonly secret: string;
}

/** A new board with a designer's link, holding a plan or nothing yet. */
export async function makeBoard(
  { access, clock, limits, store }: Pick<ServerPorts, 'access' | 'clock' | 'limits' | 'store'>,
  name: string,
  plan: Plan | undefined,
): Promise<MadeBoard> {
  const board = access.makeId('b');
  const { link, secret } = access.makeLink(board, 'designer');
  const state = plan ? createPlanState(plan) : openRoom(planRules(limits)).state();
  await store.addBoard({ id: board, name, createdAt: clock.now() }, link, state);
  return { board, secret };
}
