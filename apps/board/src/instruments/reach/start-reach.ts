import { distanceBetween, plus, scaled, unitVector } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import { REACH } from '../../tools/hit.ts';
import type { Gesture, PointerAt } from '../../tools/tool.ts';
import type { Bench, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { firstPlayers, type ReachChoice } from './reach-choice.ts';
import { openReaching, PROMPTS, type Reaching } from './reaching.ts';

export interface RunningReach extends Running {
  /** A turn where the aim is: the arcs go on from there. */
  turn(): void;
}

/** Arcs of reach about a point, and the club for the distance to the pointer. It writes nothing until a hole is left. */
export function startReach(bench: Bench, choice: ReachChoice): RunningReach {
  if (choice.players.get().length === 0) choice.players.set(firstPlayers(bench.plan()));
  const reaching = openReaching(bench, choice);
  const stops = [choice.players, choice.clubs].map((slot) => slot.onChange(reaching.refresh));
  reaching.refresh();
  return {
    prompt: reaching.prompt,
    picture: reaching.picture,
    entry: reaching.entry,
    hover: (at) => follow(reaching, at),
    press: (at) => press(reaching, at, REACH[at.kind] / bench.scale()),
    enter: (typed) => enter(reaching, parseTyped(typed, bench.reading().units)),
    lastPoint: () => reaching.state().aim?.at ?? reaching.state().path.at(-1),
    finish: reaching.leave,
    turn: reaching.turn,
    back: () => {
      const { path, doing, aim } = reaching.state();
      if (path.length === 0) return false;
      if (doing !== 'aim') reaching.set({ doing: 'aim' });
      else reaching.set({ path: path.slice(0, -1), aim: path.length > 1 ? aim : undefined });
      return true;
    },
    letGo: () => {
      const had = reaching.state().path.length > 0;
      reaching.restart();
      return had;
    },
    stop: () => {
      for (const stop of stops) stop();
    },
  };
}

/** What moves with the pointer: the aim, or the start. */
function follow(reaching: Reaching, { site }: PointerAt): void {
  const { path, doing } = reaching.state();
  if (path.length === 0) return;
  if (doing === 'carry') reaching.set({ path: [reaching.startAt(site)] });
  else if (doing === 'aim') reaching.set({ aim: reaching.aimAt(site) });
}

/** Sets the start, takes hold of it, puts it down, or holds the aim where the press is. */
function press(reaching: Reaching, at: PointerAt, reach: number): Gesture {
  const before = reaching.state();
  const [start] = before.path;
  if (!start) reaching.set({ path: [reaching.startAt(at.site)] });
  else if (before.doing === 'carry') reaching.set({ doing: 'aim' });
  else if (before.path.length === 1 && distanceBetween(at.site, start) <= reach) reaching.set({ doing: 'carry' });
  else reaching.set({ aim: reaching.aimAt(at.site), doing: 'held' });
  const { doing } = reaching.state();
  return placingGesture(at, {
    moveTo: (now) => {
      if (doing === 'held') reaching.set({ doing: 'aim' });
      follow(reaching, now);
    },
    putBack: () => reaching.set(before),
    letGo: (how) => {
      if (how === 'dragged') reaching.set({ doing: doing === 'carry' ? 'aim' : 'held' });
    },
  });
}

/** Typed values: where the start or the aim is, or how far from the last point. */
function enter(reaching: Reaching, read: ReturnType<typeof parseTyped>): string | undefined {
  const { path, aim } = reaching.state();
  const from = path.at(-1);
  if (read.kind === 'wrong') return read.why;
  if (read.kind === 'place') {
    reaching.set(from ? { aim: { at: read.at }, doing: 'held' } : { path: [read.at] });
    return undefined;
  }
  const way = from && wayOf(from, aim?.at, read.bearing);
  if (!from || !way) return from ? 'Point where it goes, or type its bearing too: 120 @ 45.' : PROMPTS.begin;
  reaching.set({ aim: { at: plus(from, scaled(way, read.metres)) }, doing: 'held' });
  return undefined;
}

function wayOf(from: SitePoint, aim: SitePoint | undefined, bearing: number | undefined): SitePoint | undefined {
  if (bearing !== undefined) return { x: Math.sin(bearing), y: Math.cos(bearing) };
  return aim && unitVector(from, aim);
}
