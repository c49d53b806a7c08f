import { reachOf } from '@loopwright/analysis';
import { distanceBetween, plus, scaled, unitVector } from '@loopwright/geometry';
import { LIMITS, type ModelPlayer, type SitePoint, settingsOf } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import { REACH } from '../../tools/hit.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running, Snapped } from '../instrument.ts';
import { leaveHole } from '../leave-hole.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { firstPlayers, type ReachChoice } from './reach-choice.ts';
import { reachLine } from './reach-line.ts';
import { reachPicture } from './reach-picture.ts';

export interface RunningReach extends Running {
  /** A turn where the aim is: the arcs go on from there. */
  turn(): void;
  leave(): void;
}

const PROMPTS = {
  begin: 'Press where the shot is played from.',
  aim: 'Point; press to hold the aim there. Enter leaves a hole: tee here, green at the aim.',
  held: 'Press to aim elsewhere, or at the start to move it. Enter leaves a hole: tee here, green at the aim.',
} as const;

/** Arcs of reach about a point, and the club for the distance to the pointer. It writes nothing until a hole is left. */
export function startReach(bench: Bench, choice: ReachChoice): RunningReach {
  const prompt = openSlot<string>(PROMPTS.begin);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);
  let path: readonly SitePoint[] = [];
  let aim: Snapped | undefined;
  let doing: 'aim' | 'held' | 'carry' = 'aim';

  const settings = () => settingsOf(bench.plan().settings);
  const players = () => choice.players.get();
  const refresh = () => {
    const { units } = bench.reading();
    const shown = { path, aim, players: players(), clubs: choice.clubs.get(), settings: settings(), units };
    picture.set(reachPicture({ ...shown, scale: bench.scale() }));
    prompt.set(path.length === 0 ? PROMPTS.begin : doing === 'held' ? PROMPTS.held : PROMPTS.aim);
    entry.set(path.length === 0 ? 'east, north of the start' : 'length, or length @ bearing');
  };
  const snapAim = ({ site }: PointerAt): Snapped => {
    const centre = path.at(-1);
    const rings = centre ? players().map((player) => ringOf(centre, player)) : [];
    return bench.snap(site, { for: 'turn or green', rings });
  };
  const ringOf = (centre: SitePoint, player: ModelPlayer) => {
    const { drive, second } = reachOf(player, settings());
    const [radius, shot] = path.length > 1 ? [second, 'second full shot'] : [drive, 'drive'];
    return { centre, radius, because: `the ${shot} of the ${player}` };
  };
  const follow = (at: PointerAt) => {
    if (path.length === 0) return;
    if (doing === 'carry') path = [bench.snap(at.site, { for: 'tee' }).at];
    else if (doing === 'aim') aim = snapAim(at);
    refresh();
  };
  const restart = () => {
    path = [];
    aim = undefined;
    doing = 'aim';
    refresh();
  };
  const leave = () => {
    const player = players()[0];
    if (!aim || !player) return bench.say(path.length === 0 ? PROMPTS.begin : 'Point where the green is first.');
    const left = leaveHole(bench, reachLine(path, aim.at, player, settings()));
    if (left.kind === 'left') restart();
    else bench.say(left.why);
  };
  const isNear = (at: PointerAt, place: SitePoint | undefined) =>
    place !== undefined && distanceBetween(at.site, place) * bench.scale() <= REACH[at.kind];
  if (players().length === 0) choice.players.set(firstPlayers(bench.plan()));
  const stops = [choice.players, choice.clubs].map((slot) => slot.onChange(refresh));
  refresh();

  return {
    prompt,
    picture,
    entry,
    hover: follow,
    press: (at) => {
      const before = { path, aim, doing };
      if (path.length === 0) path = [bench.snap(at.site, { for: 'tee' }).at];
      else if (doing === 'carry') doing = 'aim';
      else if (path.length === 1 && isNear(at, path[0])) doing = 'carry';
      else {
        doing = 'aim';
        follow(at);
        doing = 'held';
      }
      refresh();
      const was = doing;
      return placingGesture(at, {
        moveTo: (now) => {
          if (doing === 'held') doing = 'aim';
          follow(now);
        },
        putBack: () => {
          ({ path, aim, doing } = before);
          refresh();
        },
        letGo: (how) => {
          if (how === 'dragged') doing = was === 'carry' ? 'aim' : 'held';
          refresh();
        },
      });
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      const from = path.at(-1);
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'place') {
        if (from) aim = { at: read.at };
        else path = [read.at];
      } else {
        const way = from && wayOf(from, aim?.at, read.bearing);
        if (!from || !way) return from ? 'Point where it goes, or type its bearing too: 120 @ 45.' : PROMPTS.begin;
        aim = { at: plus(from, scaled(way, read.metres)) };
      }
      if (aim) doing = 'held';
      refresh();
      return undefined;
    },
    lastPoint: () => aim?.at ?? path.at(-1),
    finish: leave,
    leave,
    turn: () => {
      if (!aim || path.length === 0) return bench.say('Point where the line turns first.');
      if (path.length > LIMITS.turnPointsPerHole) return bench.say('A hole has three turns at most.');
      path = [...path, aim.at];
      aim = undefined;
      doing = 'aim';
      refresh();
    },
    back: () => {
      if (path.length === 0) return false;
      if (doing !== 'aim') doing = 'aim';
      else path = path.slice(0, -1);
      if (path.length === 0) aim = undefined;
      refresh();
      return true;
    },
    letGo: () => {
      const had = path.length > 0;
      restart();
      return had;
    },
    stop: () => {
      for (const stop of stops) stop();
    },
  };
}

function wayOf(from: SitePoint, aim: SitePoint | undefined, bearing: number | undefined): SitePoint | undefined {
  if (bearing !== undefined) return { x: Math.sin(bearing), y: Math.cos(bearing) };
  return aim && unitVector(from, aim);
}
