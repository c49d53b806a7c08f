import type { HoleId, Routing } from '@loopwright/model';
import { type MouseEvent, useMemo, useRef, useState } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { namesOf } from '../reading/names.ts';
import { useSteady } from '../reading/use-steady.ts';
import { choosing, chosenHoles, holesInOrder, withOrWithout } from '../tools/chosen-holes.ts';
import { takeOutEdit } from '../tools/take-out.ts';
import type { BeadAction } from './BeadMenu.tsx';
import { editOfAction } from './bead-actions.ts';
import { heldWords } from './bead-words.ts';
import { toHandPreview } from './hand-preview.ts';
import { loopsShown, toRoundView } from './round-view.ts';
import { orderOf, stringItems } from './string-items.ts';
import { useBeadHand } from './use-bead-hand.ts';
import { useBeadKeys } from './use-bead-keys.ts';
import { useFolded } from './use-folded.ts';
import { useLoopMenu } from './use-loop-menu.ts';
import { usePointerDrag } from './use-pointer-drag.ts';
import { usePreviewPlace } from './use-preview-place.ts';
import { useRoundShown } from './use-round-shown.ts';
import { useSlide } from './use-slide.ts';

const NONE = [] as const;

/** The string of beads and everything that can be done with it; the view only draws what this gives. */
export function useRound(props: RoundProps) {
  const { plan, routing, reading, selection, edit, select, goTo } = props;
  const [shown, onShow] = useRoundShown(routing);
  const view = useRoundView(props, shown);
  const names = useMemo(() => namesOf(plan, routing, reading.units), [plan, routing, reading.units]);
  const namesIn = (of: Routing) => namesOf(plan, of, reading.units);
  const [announced, announce] = useState('');

  const string = useRef<HTMLDivElement>(null);
  const [ghost, card] = [useRef<HTMLDivElement>(null), useRef<HTMLDivElement>(null)];
  const hand = useBeadHand({ routing, selection, edit, preview: props.preview });
  const { held } = hand;
  const { folded, onToggle } = useFolded(held);
  const items = useMemo(() => stringItems(view, folded), [view, folded]);
  const order = orderOf(items);
  useSlide(string, order);
  const drag = usePointerDrag(string, ghost, hand);

  const chosen = chosenHoles(routing, selection);
  const among = (hole: HoleId) => (chosen.includes(hole) ? chosen : [hole]);
  const onTakeOut = (hole: HoleId) => {
    const step = takeOutEdit(routing, among(hole));
    if (step) edit(step);
  };
  const keys = useBeadKeys({
    string,
    hand,
    namesIn,
    announce,
    onReach: (hole, how) => select(how === 'alone' ? { hole } : choosing([...chosen, hole])),
    onTakeOut,
    asShown: (of) => ({ ...of, loops: loopsShown(of, shown) }),
  });
  const preview = held && toPreview(props, held, shown, namesIn);
  usePreviewPlace(string, card, held, order);

  const onChoose = (event: MouseEvent, hole: HoleId) => {
    if (drag.wasDragged()) return;
    if (event.ctrlKey || event.metaKey) return select(withOrWithout(routing, selection, hole));
    if (event.shiftKey) return select(choosing([...upTo(routing, selection.hole ?? hole, hole)]));
    select({ hole });
    return goTo({ kind: 'hole', hole });
  };
  const onAction = (hole: HoleId, action: BeadAction) => {
    if (action.do === 'pick up') return keys.pickUp(hole);
    if (action.do === 'take out') return onTakeOut(hole);
    if (action.do === 'draw') {
      select(choosing([action.before, hole]));
      return props.take('draw hole');
    }
    const step = editOfAction(routing, hole, action);
    return step && edit(step);
  };
  const onChooseWalk = (key: string) => {
    select({ walk: key });
    goTo({ kind: 'walk', key });
  };
  const first = view.loops[0]?.beads[0] ?? view.spare[0];
  return {
    items,
    unit: view.unit,
    totals: view.totals,
    spare: view.spare.length,
    shown,
    onShow: useSteady(onShow),
    names,
    announced,
    string,
    ghost,
    card,
    held,
    /** What the hand holds, for the ghost at the pointer. */
    inHand: held && inHand(held, namesIn(held.routing)),
    preview,
    selection,
    chosen,
    /** The bead that Tab reaches. */
    current: held?.hole ?? selection.hole ?? first?.hole,
    onString: drag.onString,
    beads: { onPress: useSteady(drag.onPress), onKey: useSteady(keys.onKey), onChoose: useSteady(onChoose) },
    onChooseWalk: useSteady(onChooseWalk),
    onThreadKey: useSteady(keys.onThreadKey),
    onToggle: useSteady(onToggle),
    onAction: useSteady(onAction),
    ...useLoopMenu(routing, edit),
  };
}

function useRoundView(props: RoundProps, shown: string | undefined) {
  const { plan, routing, analysis, reading, change, people, findingsShown } = props;
  return useMemo(() => {
    const findings = findingsShown ? analysis.findings : NONE;
    const round = shown === undefined ? {} : { round: shown };
    return toRoundView({ plan, routing, analysis, reading, change, people, shown: findings, ...round });
  }, [plan, routing, analysis, reading, change, people, findingsShown, shown]);
}

type Held = NonNullable<ReturnType<typeof useBeadHand>['held']>;
type NamesIn = (routing: Routing) => ReturnType<typeof namesOf>;

function toPreview(props: RoundProps, held: Held, round: string | undefined, namesIn: NamesIn) {
  const { routing, analysis, reading, findingsShown, change } = props;
  const mine = change?.state === 'in progress' && !change.by ? change : undefined;
  const names = { before: namesIn(held.routing), now: namesIn(routing) };
  return toHandPreview({ held, routing, change: mine, analysis, round, reading, findingsShown }, names);
}

function inHand({ holes, hole, swapWith }: Held, names: ReturnType<typeof namesOf>): string {
  if (holes.length > 1) return heldWords(holes, names);
  return names.number(hole) + (swapWith === undefined ? '' : ` ⇄ ${names.number(swapWith)}`);
}

/** Every hole from one to another, whichever comes first; the second is the one picked out last. */
function upTo(routing: Routing, from: HoleId, to: HoleId): readonly HoleId[] {
  const order = holesInOrder(routing);
  const [one, other] = [order.indexOf(from), order.indexOf(to)];
  const between = order.slice(Math.min(one, other), Math.max(one, other) + 1);
  return [...between.filter((hole) => hole !== to), to];
}
