import { seededRandom } from '@loopwright/model';
import type { Chance } from '../access/secrets.ts';

/** Secrets and ids that are the same in every run; for tests alone. */
export function knownChance(seed = 1): Chance {
  const number = seededRandom(seed);
  let made = 0;
  return { number, secret: () => `secret-${++made}` };
}
