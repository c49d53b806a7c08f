import { clubFor, reachOf } from '@loopwright/analysis';
import type { LengthUnit, ModelPlayer, Settings } from '@loopwright/model';
import { lengthWords } from '../../reading/lengths.ts';

/**
 * What a player plays over a distance: '5 iron'; past one full shot what is left after it: 'driver, leaves 142 m: 7 iron'.
 *
 * @param distance  metres
 */
export function clubWords(
  distance: number,
  player: ModelPlayer,
  settings: Settings,
  from: 'tee' | 'turn',
  units: LengthUnit,
): string {
  const { drive, second } = reachOf(player, settings);
  const [longest, first] = from === 'tee' ? [drive, 'driver'] : [second, 'second full shot'];
  if (distance <= longest) return `${player}: ${clubFor(distance, drive)}`;
  const left = distance - longest;
  const next = left > second ? 'more than one full shot' : clubFor(left, drive);
  return `${player}: ${first}, leaves ${lengthWords(left, units)}: ${next}`;
}
