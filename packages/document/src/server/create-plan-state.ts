import type { Plan } from '@loopwright/model';
import { openPlan } from '../plan-document.ts';

/**
 * The bytes of a fresh document that holds a plan: what a new board's room starts from.
 *
 * @throws RangeError if the plan could not be read again: an untrusted one is parsed first
 */
export function createPlanState(plan: Plan): Uint8Array {
  const document = openPlan();
  document.edit({ edit: 'lay out plan', plan });
  const state = document.state();
  document.close();
  return state;
}
