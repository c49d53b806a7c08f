import { holesTouchedBy, type NamedEdit } from '@loopwright/document';
import {
  type HoleId,
  holeOf,
  type LengthUnit,
  type RingCentre,
  type SitePoint,
  type TeeSetId,
} from '@loopwright/model';
import { useMemo } from 'react';
import type { Change, Consequences, Selection } from '../board/parts.ts';
import { chosenHoles } from '../tools/chosen-holes.ts';
import type { GripsOf } from '../tools/grip.ts';
import { gripsOf } from '../tools/grips-of.ts';
import type { Targets } from '../tools/hit.ts';
import { openFindingViews } from './finding-view.ts';
import type { HoleView } from './hole-view.ts';
import { openHoleViews } from './hole-views.ts';
import { useLand } from './land/use-land.ts';
import { openLabels } from './open-labels.ts';
import { ringCentre } from './sketches/ring-centre.ts';
import { useSketches } from './sketches/use-sketches.ts';
import { openSteadyList } from './steady-list.ts';
import { openWalkViews, type WalkView } from './walk-view.ts';

interface Shown extends Consequences {
  readonly change: Change | undefined;
  readonly drags: readonly NamedEdit[];
  readonly selection: Selection;
  readonly teeSet: TeeSetId;
  readonly units: LengthUnit;
  readonly findingsShown: boolean;
  readonly scale: number;
}

const NONE: readonly never[] = [];

/** Pixels per metre below which a course is a thumbnail: signs would only lie on each other. */
const SIGNS_FROM = 0.1;

export type DrawingModel = ReturnType<typeof useDrawingModel>;

/** Everything the drawing draws, made from what the frame holds; what did not change keeps its identity. */
export function useDrawingModel(shown: Shown) {
  const { plan, routing, analysis, change, drags, scale, selection } = shown;
  const makers = useMemo(
    () => ({
      holes: openHoleViews(),
      ghosts: openHoleViews(),
      walks: openWalkViews(),
      findings: openFindingViews(),
      stillHoles: openSteadyList<HoleView>(),
      stillWalks: openSteadyList<WalkView>(),
      stillNumbers: openSteadyList<SitePoint | undefined>(),
      chosen: openSteadyList<HoleId>(),
    }),
    [],
  );
  const labelsOf = useMemo(openLabels, []);
  const centreOf = (about: RingCentre) => ringCentre(about, routing, analysis);
  const land = useLand({ ...shown, site: plan.site, chosen: selection.thing, centreOf });
  const { features } = land.still;
  const symbols = useMemo(() => plan.site.bases.map(({ apron }) => apron), [plan.site.bases]);
  const holes = makers.holes(routing, analysis);
  const walks = makers.walks(analysis);
  const signsShown = shown.findingsShown && scale >= SIGNS_FROM;
  const findings = useMemo(() => (signsShown ? makers.findings(analysis) : NONE), [analysis, signsShown, makers]);
  const hands = drags.length > 0 ? 'dragging' : 'at rest';
  const labels = useMemo(
    () => labelsOf({ holes, findings, features, symbols, scale }, hands),
    [labelsOf, holes, findings, features, symbols, scale, hands],
  );

  const moving = useMemo(() => holesOf(drags, routing.id), [drags, routing.id]);
  const sketches = useSketches({ ...shown, sketches: plan.site.sketches, moving });
  const isMoving = ({ id }: HoleView) => moving.has(id);
  const ghosts = useMemo(() => {
    const before =
      change?.state === 'in progress' ? change.beforePlan.routings.find(({ id }) => id === routing.id) : undefined;
    if (!change || !before || moving.size === 0) return NONE;
    // Others' drags are in both states: only what this one moves has another place to be seen at.
    const holes = before.holes.filter((hole) => moving.has(hole.id) && holeOf(routing, hole.id) !== hole);
    return makers.ghosts({ ...before, holes }, change.before);
  }, [change, routing, moving, makers]);

  const chosen = makers.chosen(chosenHoles(routing, selection));
  const only = chosen.length === 1 ? chosen[0] : undefined;
  const moreAt = besideNumber(labels.numbers.get(selection.hole ?? ''), scale);
  const grips = gripsShown(shown, chosen, [...labels.numbers.values(), ...(moreAt ? [moreAt] : [])]);
  const targets: Targets = {
    holes,
    numbers: labels.numbers,
    walks,
    findings,
    findingPlaces: labels.findings,
    teeSet: shown.teeSet,
    selected: only,
    ...(grips ? { grips } : {}),
    land: land.targets,
  };
  const stillHoles = makers.stillHoles(holes.filter((hole) => !isMoving(hole)));
  const places = makers.stillNumbers(stillHoles.map(({ id }) => labels.numbers.get(id)));
  const stillNumbers = useMemo(() => numbersAt(stillHoles, places), [stillHoles, places]);
  const walkMoves = (walk: (typeof walks)[number]) => walk.holes.some((hole) => moving.has(hole));
  return {
    land,
    sketches,
    labels,
    targets,
    chosen,
    moreAt,
    ghosts,
    stillHoles,
    stillNumbers,
    movingHoles: holes.filter(isMoving),
    stillWalks: makers.stillWalks(walks.filter((walk) => !walkMoves(walk))),
    movingWalks: walks.filter(walkMoves),
    selectedHole: holes.find(({ id }) => id === only),
  };
}

/** The grips of the one hole picked out, or of the hole whose walk is; none on a routing that does not move. */
function gripsShown(shown: Shown, chosen: readonly HoleId[], numbers: readonly SitePoint[]): GripsOf | undefined {
  const { routing, analysis, selection, teeSet, scale } = shown;
  const walk = analysis.walks.find(({ key }) => key === selection.walk);
  const id = walk && 'hole' in walk.from ? walk.from.hole : chosen[0];
  const [hole, figures] = id === undefined ? [] : [holeOf(routing, id), analysis.holes.get(id)];
  if (!hole || !figures || chosen.length > 1 || routing.locked) return undefined;
  return { hole: hole.id, grips: gripsOf({ hole, figures, walks: analysis.walks, teeSet, scale, numbers }) };
}

/** Pixels from the middle of a number to the button beside it. */
const BESIDE = 29;

/** Where the button of the menu stands. */
function besideNumber(number: SitePoint | undefined, scale: number): SitePoint | undefined {
  return number && { x: number.x + BESIDE / scale, y: number.y };
}

function holesOf(drags: readonly NamedEdit[], routing: string): ReadonlySet<HoleId> {
  return new Set(drags.flatMap((edit) => holesTouchedBy(edit, routing)));
}

function numbersAt(holes: readonly HoleView[], places: readonly (SitePoint | undefined)[]) {
  return new Map(
    holes.flatMap(({ id }, index): [HoleId, SitePoint][] => {
      const at = places[index];
      return at ? [[id, at]] : [];
    }),
  );
}
