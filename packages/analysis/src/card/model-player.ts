import type { ModelPlayer, Settings } from '@loopwright/model';
import type { Sex } from '../figures.ts';

/** How far a model player's full shots go, metres. */
export interface Reach {
  readonly drive: number;
  readonly second: number;
  /** How much further than a full shot the approach may be before one more full shot is counted. */
  readonly stretch: number;
}

/**
 * The scratch players are rated as reaching par 4s in two and par 5s in three however long: the longest of the par
 * table leaves 210 yd against a full shot of 190. The bogey players take one more.
 */
const SCRATCH_STRETCH = 1.12;

/**
 * The model player's tee shot and later full shots, from the board's settings.
 *
 * Source of the defaults: Course Rating System, scratch and bogey players (tee shot; reach in two less the tee shot).
 */
export function reachOf(player: ModelPlayer, settings: Settings): Reach {
  switch (player) {
    case 'scratch man':
      return { drive: settings['scratch-man-drive'], second: settings['scratch-man-second'], stretch: SCRATCH_STRETCH };
    case 'bogey man':
      return { drive: settings['bogey-man-drive'], second: settings['bogey-man-second'], stretch: 1 };
    case 'scratch woman':
      return {
        drive: settings['scratch-woman-drive'],
        second: settings['scratch-woman-second'],
        stretch: SCRATCH_STRETCH,
      };
    case 'bogey woman':
      return { drive: settings['bogey-woman-drive'], second: settings['bogey-woman-second'], stretch: 1 };
  }
}

export function sexOf(player: ModelPlayer): Sex {
  return player === 'scratch man' || player === 'bogey man' ? 'men' : 'women';
}
