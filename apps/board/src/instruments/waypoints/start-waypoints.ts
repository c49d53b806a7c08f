import { polylineLength } from '@loopwright/geometry';
import { type HoleId, LIMITS, pointToMillimetre, type SitePoint } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { REACH } from '../../tools/hit.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { ledThrough, lineOf, type ShownWaypoint, type WalkToLead, walkNear, waypointNear } from './walk-line.ts';

export type WaypointUse = 'lead' | 'take out';

const PROMPTS: Readonly<Record<WaypointUse, string>> = {
  lead: 'Press where the nearest walk should pass. A waypoint that is there is moved with the bare hand.',
  'take out': 'Press on a waypoint to take it out.',
};
const LOCKED = 'This routing is locked: copy it to lead its walks.';

/** Leads walks by waypoints, and takes waypoints out: each press is one step. */
export function startWaypoints(bench: Bench, use: Watched<WaypointUse>): Running {
  const prompt = openSlot<string>(PROMPTS.lead);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('east, north of a waypoint');
  const leading = openLeading(bench, picture.set);

  const clear = () => {
    leading.clear();
    prompt.set(bench.routing().locked ? LOCKED : PROMPTS[use.get()]);
  };
  const lead = (at: SitePoint): string | undefined => {
    const why = leading.write(at);
    if (why === undefined) clear();
    return why;
  };
  const place = (at: PointerAt) => bench.snap(at.site, { for: 'anything' }).at;
  const stopFollowing = use.onChange(clear);
  clear();

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      if (use.get() === 'take out') picture.set(waypointAt(bench, at));
      else leading.show(place(at));
    },
    press: (at) => {
      const why = use.get() === 'take out' ? takeOut(bench, at) : leading.write(place(at));
      if (why !== undefined) bench.say(why);
      else clear();
      return undefined;
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      if (read.kind === 'wrong') return read.why;
      return read.kind === 'place' ? lead(read.at) : 'Type where the walk should pass: 120.5, 40.';
    },
    letGo: () => {
      clear();
      return false;
    },
    stop: () => {
      stopFollowing();
      bench.show(undefined);
    },
  };
}

const walkWords = (bench: Bench, hole: HoleId) =>
  `walk from green ${namesOf(bench.plan(), bench.routing(), bench.reading().units).number(hole)}`;

/** The nearest walk led through a place: shown with how long it would be, or written. */
function openLeading(bench: Bench, draw: (picture: InstrumentPicture) => void) {
  let shown: ShownWaypoint | undefined;
  const walkAt = (at: SitePoint) => walkNear(bench.routing(), bench.analysis(), at, shown);
  const showLed = (walk: WalkToLead, place: SitePoint) => {
    const at = pointToMillimetre(place);
    const waypoints = ledThrough(walk, at);
    shown = { hole: walk.hole, at };
    bench.show({ edit: 'set waypoints', routing: bench.routing().id, hole: walk.hole, waypoints });
    const line = lineOf({ ...walk, waypoints });
    draw({
      dots: [{ at, manner: 'new' }],
      atPointer: [walkWords(bench, walk.hole), lengthWords(polylineLength(line), bench.reading().units)],
    });
  };
  return {
    clear: () => {
      shown = undefined;
      bench.show(undefined);
      draw({});
    },
    show: (at: SitePoint) => {
      const walk = bench.routing().locked ? undefined : walkAt(at);
      if (walk) showLed(walk, at);
    },
    /** Answers why it is not led there. */
    write: (at: SitePoint): string | undefined => {
      if (bench.routing().locked) return LOCKED;
      const walk = walkAt(at);
      if (!walk) return 'There is no walk between two holes yet.';
      if (walk.waypoints.length >= LIMITS.waypointsPerHole)
        return `A walk has ${LIMITS.waypointsPerHole} waypoints at most.`;
      showLed(walk, at);
      bench.write();
      bench.say(`The ${walkWords(bench, walk.hole)} passes here.`);
      return undefined;
    },
  };
}

const nearest = (bench: Bench, at: PointerAt) => waypointNear(bench.routing(), at.site, REACH[at.kind] / bench.scale());

/** The waypoint that a press would take out. */
function waypointAt(bench: Bench, at: PointerAt): InstrumentPicture {
  const found = nearest(bench, at);
  const place = found?.waypoints[found.index];
  return place && found ? { dots: [{ at: place, manner: 'grip' }], atPointer: [walkWords(bench, found.hole)] } : {};
}

/** Answers why no waypoint is taken out. */
function takeOut(bench: Bench, at: PointerAt): string | undefined {
  const found = nearest(bench, at);
  if (bench.routing().locked) return LOCKED;
  if (!found) return 'There is no waypoint here.';
  const waypoints = found.waypoints.filter((_, index) => index !== found.index);
  bench.edit({ edit: 'set waypoints', routing: bench.routing().id, hole: found.hole, waypoints });
  bench.say(`A waypoint of the ${walkWords(bench, found.hole)} is taken out.`);
  return undefined;
}
