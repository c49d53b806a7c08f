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

/** Leads walks by waypoints: each press is one step, shown with what it does to the walk before. */
export function startWaypoints(bench: Bench, use: Watched<WaypointUse>): Running {
  const prompt = openSlot<string>(PROMPTS.lead);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('east, north of a waypoint');

  let shown: ShownWaypoint | undefined;

  const words = (hole: HoleId) => {
    const { units } = bench.reading();
    return `walk from green ${namesOf(bench.plan(), bench.routing(), units).number(hole)}`;
  };
  const clear = () => {
    shown = undefined;
    bench.show(undefined);
    prompt.set(bench.routing().locked ? LOCKED : PROMPTS[use.get()]);
    picture.set({});
  };
  const showLed = (walk: WalkToLead, place: SitePoint) => {
    const at = pointToMillimetre(place);
    const waypoints = ledThrough(walk, at);
    shown = { hole: walk.hole, at };
    bench.show({ edit: 'set waypoints', routing: bench.routing().id, hole: walk.hole, waypoints });
    const line = lineOf({ ...walk, waypoints });
    picture.set({
      dots: [{ at, manner: 'new' }],
      atPointer: [words(walk.hole), lengthWords(polylineLength(line), bench.reading().units)],
    });
  };
  const walkAt = (at: SitePoint) => walkNear(bench.routing(), bench.analysis(), at, shown);
  const lead = (at: SitePoint): string | undefined => {
    if (bench.routing().locked) return LOCKED;
    const walk = walkAt(at);
    if (!walk) return 'There is no walk between two holes yet.';
    if (walk.waypoints.length >= LIMITS.waypointsPerHole)
      return `A walk has ${LIMITS.waypointsPerHole} waypoints at most.`;
    showLed(walk, at);
    bench.write();
    bench.say(`The ${words(walk.hole)} passes here.`);
    clear();
    return undefined;
  };
  const nearest = (at: PointerAt) => waypointNear(bench.routing(), at.site, REACH[at.kind] / bench.scale());
  const takeAway = (at: PointerAt) => {
    const found = nearest(at);
    if (bench.routing().locked) return bench.say(LOCKED);
    if (!found) return bench.say('There is no waypoint here.');
    const waypoints = found.waypoints.filter((_, index) => index !== found.index);
    bench.edit({ edit: 'set waypoints', routing: bench.routing().id, hole: found.hole, waypoints });
    bench.say(`A waypoint of the ${words(found.hole)} is taken out.`);
    clear();
  };
  const stopFollowing = use.onChange(clear);
  clear();

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      if (use.get() === 'take out') {
        const found = nearest(at);
        const place = found?.waypoints[found.index];
        return picture.set(
          place && found ? { dots: [{ at: place, manner: 'grip' }], atPointer: [words(found.hole)] } : {},
        );
      }
      const place = bench.snap(at.site, { for: 'anything' }).at;
      const walk = bench.routing().locked ? undefined : walkAt(place);
      if (walk) showLed(walk, place);
    },
    press: (at) => {
      if (use.get() === 'take out') takeAway(at);
      else {
        const why = lead(bench.snap(at.site, { for: 'anything' }).at);
        if (why) bench.say(why);
      }
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
