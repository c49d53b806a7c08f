// Run by two JavaScript engines: analyses the demo as it is, then with every hole moved a little, and prints all of it.
import { openAnalysis } from '@loopwright/analysis';
import { demoPlan } from '@loopwright/demo';
import type { Hole, Plan } from '@loopwright/model';
import { seededRandom } from '@loopwright/model';

declare const print: ((text: string) => void) | undefined;
declare const console: { log(text: string): void };

const random = seededRandom(20);

/** The hole with each of its places moved by up to 40 m. */
function shifted(hole: Hole): Hole {
  const by = () => ({ x: (random() - 0.5) * 80, y: (random() - 0.5) * 80 });
  const moved = (point: { readonly x: number; readonly y: number }) => {
    const { x, y } = by();
    return { x: point.x + x, y: point.y + y };
  };
  return {
    ...hole,
    tees: Object.fromEntries(Object.entries(hole.tees).map(([set, at]) => [set, moved(at)])),
    turnPoints: hole.turnPoints.map((turn) => ({ ...turn, at: moved(turn.at) })),
    ...(hole.green ? { green: { ...hole.green, centre: moved(hole.green.centre) } } : {}),
  };
}

function withShiftedHoles(plan: Plan): Plan {
  return { ...plan, routings: plan.routings.map((routing) => ({ ...routing, holes: routing.holes.map(shifted) })) };
}

const said: unknown[] = [];
let plan = demoPlan();
for (let round = 0; round < 12; round++) {
  const analyser = openAnalysis();
  for (const routing of plan.routings) {
    const { holes, ...rest } = analyser.analyse(plan, routing.id);
    said.push({ holes: [...holes], ...rest });
  }
  plan = withShiftedHoles(demoPlan());
}
const text = JSON.stringify(said);
if (typeof print === 'function') print(text);
else console.log(text);
