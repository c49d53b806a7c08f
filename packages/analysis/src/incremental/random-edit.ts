import type { Hole, HoleId, Plan, Routing, SitePoint } from '@loopwright/model';
import { pointToMillimetre } from '@loopwright/model';

type Random = () => number;

/** For tests: one random change as people make them. Untouched holes and features keep their identity. */
export function randomEdit(plan: Plan, random: Random): Plan {
  const edits = [moveGreen, moveTee, moveHole, swap, takeOut, bringBack, changeSetting, moveFeature, moveBase, setPar];
  const edit = edits[Math.floor(random() * edits.length)] ?? moveGreen;
  return edit(plan, random);
}

function pick<Item>(items: readonly Item[], random: Random): Item | undefined {
  return items[Math.floor(random() * items.length)];
}

function shift(at: SitePoint, random: Random): SitePoint {
  return pointToMillimetre({ x: at.x + (random() - 0.5) * 120, y: at.y + (random() - 0.5) * 120 });
}

function withRouting(plan: Plan, change: (routing: Routing) => Routing): Plan {
  return { ...plan, routings: plan.routings.map(change) };
}

function withHole(plan: Plan, random: Random, change: (hole: Hole) => Hole): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.holes, random);
    return { ...routing, holes: routing.holes.map((hole) => (hole === chosen ? change(hole) : hole)) };
  });
}

/** For benches: the green of one hole somewhere near. */
export function moveGreen(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) =>
    hole.green ? { ...hole, green: { ...hole.green, centre: shift(hole.green.centre, random) } } : hole,
  );
}

function moveTee(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) => {
    const { back } = hole.tees;
    return back ? { ...hole, tees: { ...hole.tees, back: shift(back, random) } } : hole;
  });
}

function moveHole(plan: Plan, random: Random): Plan {
  const by = shift({ x: 0, y: 0 }, random);
  const moved = ({ x, y }: SitePoint) => pointToMillimetre({ x: x + by.x, y: y + by.y });
  return withHole(plan, random, (hole) => ({
    ...hole,
    tees: Object.fromEntries(Object.entries(hole.tees).map(([id, at]) => [id, moved(at)])),
    turnPoints: hole.turnPoints.map((turn) => ({ ...turn, at: moved(turn.at) })),
    ...(hole.green && { green: { ...hole.green, centre: moved(hole.green.centre) } }),
  }));
}

function setPar(plan: Plan, random: Random): Plan {
  const men = pick([3, 4, 5, 'by length'] as const, random) ?? 4;
  return withHole(plan, random, (hole) => ({ ...hole, par: { ...hole.par, men } }));
}

function renamed(order: readonly HoleId[], a: HoleId, b: HoleId): readonly HoleId[] {
  return order.map((hole) => (hole === a ? b : hole === b ? a : hole));
}

function swap(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const played = routing.loops.flatMap(({ holes }) => holes);
    const a = pick(played, random);
    const b = pick(played, random);
    if (a === undefined || b === undefined) return routing;
    return { ...routing, loops: routing.loops.map((loop) => ({ ...loop, holes: renamed(loop.holes, a, b) })) };
  });
}

function takeOut(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(
      routing.loops.flatMap(({ holes }) => holes),
      random,
    );
    if (chosen === undefined) return routing;
    return {
      ...routing,
      loops: routing.loops.map((loop) => ({ ...loop, holes: loop.holes.filter((hole) => hole !== chosen) })),
      holes: routing.holes.map((hole) =>
        hole.id === chosen ? { ...hole, seat: { in: 'spare', key: hole.id } as const } : hole,
      ),
      spare: [...routing.spare, chosen],
    };
  });
}

function bringBack(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.spare, random);
    const loop = pick(routing.loops, random);
    if (chosen === undefined || !loop) return routing;
    const seat = { in: 'loop', loop: loop.id, key: chosen } as const;
    return {
      ...routing,
      loops: routing.loops.map((other) => (other === loop ? { ...loop, holes: [...loop.holes, chosen] } : other)),
      holes: routing.holes.map((hole) => (hole.id === chosen ? { ...hole, seat } : hole)),
      spare: routing.spare.filter((hole) => hole !== chosen),
    };
  });
}

function changeSetting(plan: Plan, random: Random): Plan {
  return { ...plan, settings: { ...plan.settings, 'long-walk-look': Math.round(random() * 300) } };
}

function moveFeature(plan: Plan, random: Random): Plan {
  const chosen = pick(plan.site.features, random);
  const features = plan.site.features.map((feature) =>
    feature === chosen
      ? { ...feature, geometry: { type: 'point', at: shift({ x: 700, y: 700 }, random) } as const }
      : feature,
  );
  return { ...plan, site: { ...plan.site, features } };
}

function moveBase(plan: Plan, random: Random): Plan {
  const bases = plan.site.bases.map((base) => ({ ...base, apron: shift(base.apron, random) }));
  return { ...plan, site: { ...plan.site, bases } };
}
