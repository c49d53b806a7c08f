import type { HoleId, Routing } from '@loopwright/model';
import { useMemo, useRef, useState } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { toBadge } from '../drawing/badge-view.ts';
import { namesOf } from '../reading/names.ts';
import { useSteady } from '../reading/use-steady.ts';
import type { BeadAction } from './BeadMenu.tsx';
import { editOfAction } from './bead-actions.ts';
import { toRoundView } from './round-view.ts';
import { orderOf, stringItems } from './string-items.ts';
import { useBeadHand } from './use-bead-hand.ts';
import { useBeadKeys } from './use-bead-keys.ts';
import { usePointerDrag } from './use-pointer-drag.ts';
import { useSlide } from './use-slide.ts';

const NONE = [] as const;

/** The string of beads and everything that can be done with it; the view only draws what this gives. */
export function useRound(props: RoundProps) {
  const { plan, routing, analysis, reading, change, people, findingsShown, selection, edit, select, goTo } = props;
  const view = useMemo(() => {
    const shown = findingsShown ? analysis.findings : NONE;
    return toRoundView({ plan, routing, analysis, reading, change, people, shown });
  }, [plan, routing, analysis, reading, change, people, findingsShown]);
  const names = useMemo(() => namesOf(plan, routing, reading.units), [plan, routing, reading.units]);
  const [closed, setClosed] = useState<ReadonlySet<string>>(new Set());
  const [announced, announce] = useState('');

  const string = useRef<HTMLDivElement>(null);
  const ghost = useRef<HTMLDivElement>(null);
  const items = useMemo(() => stringItems(view, closed), [view, closed]);
  useSlide(string, orderOf(items));
  const hand = useBeadHand(routing, edit, props.preview);
  const drag = usePointerDrag(string, ghost, hand);
  const onTakeOut = (hole: HoleId) => edit({ edit: 'take out', routing: routing.id, hole });
  const namesIn = (of: Routing) => namesOf(plan, of, reading.units);
  const onReach = (hole: HoleId) => select({ hole });
  const keys = useBeadKeys({ string, hand, namesIn, announce, onReach, onTakeOut });

  const mine = change?.state === 'in progress' && !change.by && hand.held !== undefined && findingsShown;
  const worst = useMemo(() => (mine && change ? toBadge(change, names) : NONE), [mine, change, names]);

  const onChoose = (hole: HoleId) => {
    if (drag.wasDragged()) return;
    select({ hole });
    goTo({ kind: 'hole', hole });
  };
  const onChooseWalk = (key: string) => {
    select({ walk: key });
    goTo({ kind: 'walk', key });
  };
  const onToggle = (loop: string) =>
    setClosed((now) => new Set(now.has(loop) ? [...now].filter((each) => each !== loop) : [...now, loop]));
  const onAction = (hole: HoleId, action: BeadAction) => {
    if (action.do === 'pick up') return keys.pickUp(hole);
    const step = editOfAction(routing, hole, action);
    if (step) edit(step);
  };
  const first = view.loops[0]?.beads[0] ?? view.spare[0];
  return {
    items,
    unit: view.unit,
    spare: view.spare.length,
    names,
    announced,
    string,
    ghost,
    held: hand.held,
    /** What putting it down here would do at worst and at best. */
    worst,
    selection,
    /** The bead that Tab reaches. */
    current: hand.held?.hole ?? selection.hole ?? first?.hole,
    onString: drag.onString,
    beads: { onPress: useSteady(drag.onPress), onKey: useSteady(keys.onKey), onChoose: useSteady(onChoose) },
    onChooseWalk: useSteady(onChooseWalk),
    onToggle: useSteady(onToggle),
    onAction: useSteady(onAction),
  };
}
