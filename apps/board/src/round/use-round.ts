import type { HoleId, Routing } from '@loopwright/model';
import { type MouseEvent, useMemo, useRef, useState } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { namesOf } from '../reading/names.ts';
import { useSteady } from '../reading/use-steady.ts';
import { heldWords } from './bead-words.ts';
import { toHandPreview } from './hand-preview.ts';
import { loopsShown, toRoundView } from './round-view.ts';
import { orderOf, reachable, stringItems } from './string-items.ts';
import { useBeadChoices } from './use-bead-choices.ts';
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
  const { plan, routing, reading, selection, edit } = props;
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

  const choices = useBeadChoices(props);
  const keys = useBeadKeys({
    string,
    hand,
    namesIn,
    announce,
    onReach: choices.onReach,
    onTakeOut: choices.onTakeOut,
    asShown: (of) => ({ ...of, loops: loopsShown(of, shown) }),
  });
  const preview = held && toPreview(props, held, shown, namesIn);
  usePreviewPlace(string, card, held, order);

  // A press that became a drag chooses nothing.
  const onChoose = (event: MouseEvent, hole: HoleId) => {
    if (!drag.wasDragged()) choices.onChoose(event, hole);
  };
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
    chosen: choices.chosen,
    /** The bead that Tab reaches. */
    current: reachable(items, held?.hole ?? selection.hole),
    onString: drag.onString,
    beads: { onPress: useSteady(drag.onPress), onKey: useSteady(keys.onKey), onChoose: useSteady(onChoose) },
    onChooseWalk: useSteady(choices.onChooseWalk),
    onThreadKey: useSteady(keys.onThreadKey),
    onToggle: useSteady(onToggle),
    onMore: props.more,
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
