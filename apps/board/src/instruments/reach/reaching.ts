import { reachOf } from '@loopwright/analysis';
import { LIMITS, type ModelPlayer, type Settings, type SitePoint, settingsOf } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import type { Bench, InstrumentPicture, Snapped } from '../instrument.ts';
import { leaveHole } from '../leave-hole.ts';
import type { ReachChoice } from './reach-choice.ts';
import { reachLine } from './reach-line.ts';
import { reachPicture } from './reach-picture.ts';

/** What a reach is now: the points set so far, the aim, and whether it follows the pointer. */
export interface ReachState {
  /** The start, then the turns: the arcs are drawn about the last. */
  readonly path: readonly SitePoint[];
  readonly aim: Snapped | undefined;
  /** The aim follows the pointer, is held where it was pressed, or the start is being carried. */
  readonly doing: 'aim' | 'held' | 'carry';
}

/** A reach being laid, with what is shown of it. */
export interface Reaching {
  readonly prompt: Watched<string>;
  readonly picture: Watched<InstrumentPicture>;
  readonly entry: Watched<string | undefined>;
  state(): ReachState;
  set(change: Partial<ReachState>): void;
  /** The aim for a pointer: pulled to the arcs of the players' longest shots, and to what is on the land. */
  aimAt(at: SitePoint): Snapped;
  /** Where the shot is played from, pulled to tees and tee sites. */
  startAt(at: SitePoint): SitePoint;
  /** Draws it anew for other players, clubs or figures. */
  refresh(): void;
  /** A turn where the aim is: the arcs go on from there. */
  turn(): void;
  /** Makes a hole of it: tee at the start, green at the aim. */
  leave(): void;
  restart(): void;
}

export const PROMPTS = {
  begin: 'Press where the shot is played from.',
  aim: 'Point; press to hold the aim there. Enter leaves a hole: tee here, green at the aim.',
  held: 'Press to aim elsewhere, or at the start to move it. Enter leaves a hole: tee here, green at the aim.',
} as const;

const NOTHING: ReachState = { path: [], aim: undefined, doing: 'aim' };

export function openReaching(bench: Bench, choice: ReachChoice): Reaching {
  const prompt = openSlot<string>(PROMPTS.begin);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);
  let state = NOTHING;

  const settings = () => settingsOf(bench.plan().settings);
  const players = () => choice.players.get();
  const refresh = () => {
    const { path, aim, doing } = state;
    const { units } = bench.reading();
    const shown = { path, aim, players: players(), clubs: choice.clubs.get(), settings: settings(), units };
    picture.set(reachPicture({ ...shown, scale: bench.scale() }));
    prompt.set(path.length === 0 ? PROMPTS.begin : doing === 'held' ? PROMPTS.held : PROMPTS.aim);
    entry.set(path.length === 0 ? 'east, north of the start' : 'length, or length @ bearing');
  };
  const set = (change: Partial<ReachState>) => {
    state = { ...state, ...change };
    refresh();
  };
  return {
    prompt,
    picture,
    entry,
    state: () => state,
    set,
    aimAt: (at) => {
      const rings = players().flatMap((player) => longestRing(state.path, player, settings()));
      return bench.snap(at, { for: 'turn or green', rings });
    },
    startAt: (at) => bench.snap(at, { for: 'tee' }).at,
    refresh,
    turn: () => {
      const { path, aim } = state;
      if (!aim || path.length === 0) return bench.say('Point where the line turns first.');
      if (path.length > LIMITS.turnPointsPerHole) return bench.say('A hole has three turns at most.');
      set({ path: [...path, aim.at], aim: undefined, doing: 'aim' });
    },
    leave: () => {
      const { path, aim } = state;
      const player = players()[0];
      if (!aim || !player) return bench.say(path.length === 0 ? PROMPTS.begin : 'Point where the green is first.');
      const left = leaveHole(bench, reachLine(path, aim.at, player, settings()));
      if (left.kind === 'left') set(NOTHING);
      else bench.say(left.why);
    },
    restart: () => set(NOTHING),
  };
}

/** The arc of a player's longest shot from where the arcs are drawn, as something that pulls. */
function longestRing(path: readonly SitePoint[], player: ModelPlayer, settings: Settings) {
  const centre = path.at(-1);
  if (!centre) return [];
  const { drive, second } = reachOf(player, settings);
  const [radius, shot] = path.length > 1 ? [second, 'second full shot'] : [drive, 'drive'];
  return [{ centre, radius, because: `the ${shot} of the ${player}` }];
}
