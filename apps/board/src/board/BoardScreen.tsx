import type { HoleId, PartId } from '@loopwright/model';
import { lazy, Suspense, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { DayStartButton } from '../day-start/DayStartButton.tsx';
import { useDayStart } from '../day-start/use-day-start.ts';
import { Drawer } from '../drawer/Drawer.tsx';
import { Drawing } from '../drawing/Drawing.tsx';
import type { BlobAddress } from '../drawing/images/ImagesLayer.tsx';
import { openViewpoint } from '../drawing/viewpoint.ts';
import { FeaturesFileSlot } from '../features-file/FeaturesFileSlot.tsx';
import { GroundLine } from '../ground-line/GroundLine.tsx';
import { HoleHandsSlot } from '../hole-menu/HoleHandsSlot.tsx';
import { useHoleHands } from '../hole-menu/use-hole-hands.ts';
import { ImportSlot } from '../images/ImportSlot.tsx';
import type { ImageImports } from '../images/image-imports.ts';
import { ScaleNote } from '../images/ScaleNote.tsx';
import { useSurroundings } from '../images/use-surroundings.ts';
import { useDrawingTable } from '../instruments/use-drawing-table.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { Frame } from '../live/frame.ts';
import type { Slot } from '../live/slot.ts';
import { useTold } from '../live/use-told.ts';
import { useWatched } from '../live/use-watched.ts';
import { Round } from '../round/Round.tsx';
import type { HeldParts } from '../tools/tool.ts';
import type { PointerHandParts } from '../tools/use-pointer-hand.ts';
import { BoardHead } from './BoardHead.tsx';
import { EmptyPlan } from './EmptyPlan.tsx';
import { FindingsHeard } from './FindingsHeard.tsx';
import { openMenuByKey } from './key-actions.ts';
import { NoticeLine } from './NoticeLine.tsx';
import { PinSheet } from './PinSheet.tsx';
import type { GoTo, Me } from './parts.ts';
import { spokenSelection } from './spoken.ts';
import { useBoardKeys } from './use-board-keys.ts';
import { useReading } from './use-reading.ts';

interface BoardScreenProps {
  readonly session: BoardSession;
  readonly frame: Frame;
  readonly me: Me;
  readonly inviteLink: string;
  readonly blobAddress: BlobAddress;
  /** Tells boards, and memberships of one, apart on this machine. */
  readonly dayKey: string;
  readonly imports: ImageImports | undefined;
  /** A file of what lies on the land, on its way to this board. */
  readonly featuresFile: Slot<File | undefined>;
}

const KeysSheet = lazy(() => import('../head/KeysSheet.tsx').then((sheet) => ({ default: sheet.KeysSheet })));

/** The board: head, round, drawing, ground line and drawer, joined by what the session says. */
export function BoardScreen(props: BoardScreenProps) {
  const { session, frame, me, inviteLink, blobAddress, imports, dayKey, featuresFile } = props;
  const viewpoint = useMemo(openViewpoint, []);
  const roster = useWatched(session.roster);
  const selection = useWatched(session.selection);
  const [reading, setReading] = useReading(frame.plan.teeSets, frame.plan.site.units);
  const [findingsShown, setFindingsShown] = useState(true);
  const [keysOpen, setKeysOpen] = useState(false);
  const openKeys = useCallback(() => setKeysOpen(true), []);
  const [pin, setPin] = useState<readonly HeldParts[]>();
  const cancelPress = useRef<() => boolean>(() => false);
  const onHand = useCallback((cancel: () => boolean) => {
    cancelPress.current = cancel;
  }, []);
  const askAboutPin = useCallback<KeyHandAsk>((hole, parts, further = []) => setPin([{ hole, parts }, ...further]), []);
  const goTo = useCallback<GoTo>(
    (place) => {
      const now = session.frame.get();
      if (now) viewpoint.show(place, now);
    },
    [session, viewpoint],
  );
  const { table, take, isHolding } = useDrawingTable({ session, viewpoint, reading, me });
  const holes = useHoleHands(session, take);
  const day = useDayStart(session, dayKey, frame);
  const beforeHeld = useBoardKeys({
    session,
    viewpoint,
    cancelPress: () => cancelPress.current(),
    askAboutPin,
    onKeys: openKeys,
    onFindings: () => setFindingsShown((shown) => !shown),
    onDayStart: day.toggle,
    instruments: table?.keys,
    holes,
  });
  const onMenu = useCallback<MenuAsked>(
    (at, under) => {
      if (at) holes.open(at, under);
      else openMenuByKey({ session, viewpoint, holes });
    },
    [session, viewpoint, holes],
  );
  useFirstFit(viewpoint, frame);
  useSurroundings(imports, viewpoint, session);

  const before = beforeHeld ? stateBefore(frame) : undefined;
  const shown = before ?? frame;
  const told = useTold(frame);
  const spoken = useMemo(() => spokenSelection(before ?? told, selection, reading), [before, told, selection, reading]);
  const parts = { ...pickConsequences(before ?? told), reading, selection, findingsShown, ...pickChange(told) };
  const hands = { select: holes.select, goTo, edit: session.edit, preview: session.drag };

  return (
    <main className="board" data-testid="board">
      <BoardHead
        {...{ session, me, roster, reading, setReading, findingsShown, setFindingsShown, inviteLink, goTo, openKeys }}
        routing={frame.routing.id}
      />
      <Round {...parts} people={roster} {...hands} more={holes.open} />
      <Drawing
        {...pickConsequences(shown)}
        change={before ? undefined : frame.change}
        drags={shown.drags}
        mineInHand={shown.mineInHand}
        people={session.people}
        roster={roster}
        selection={selection}
        reading={reading}
        findingsShown={findingsShown}
        viewpoint={viewpoint}
        blobAddress={blobAddress}
        dayStart={day.picture}
        spoken={spoken}
        banner={before && 'Before the change'}
        select={holes.select}
        drag={session.drag}
        drop={session.drop}
        edit={session.edit}
        say={session.say}
        point={session.point}
        askAboutPin={askAboutPin}
        sayLocked={session.sayLocked}
        onHand={onHand}
        onMenu={onMenu}
        picks={holes.picks}
        table={table}
      >
        {table && <table.Tray hand={table.hand} size={viewpoint.size} isBare={frame.routing.holes.length === 0} />}
        {!isHolding && <EmptyPlan frame={frame} take={take} onKeys={openKeys} />}
        <HoleHandsSlot {...parts} hands={holes} edit={session.edit} />
        <ScaleNote images={frame.plan.site.images} onScale={() => take('scale image')} />
        {imports && <ImportSlot imports={imports} />}
        <DayStartButton since={day.since} isShown={day.isShown} toggle={day.toggle} legend={day.legend} />
        <NoticeLine session={session} frame={frame} units={reading.units} />
        <FindingsHeard session={session} reading={reading} findingsShown={findingsShown} />
      </Drawing>
      <GroundLine />
      <Drawer
        {...parts}
        {...hands}
        take={take}
        say={session.say}
        more={holes.open}
        bringFeatures={featuresFile.set}
        {...(imports ? { imports } : {})}
      />
      <FeaturesFileSlot file={featuresFile} session={session} goTo={goTo} />
      {keysOpen && (
        <Suspense fallback={null}>
          <KeysSheet onClose={() => setKeysOpen(false)} />
        </Suspense>
      )}
      {pin && <PinSheet question={pin} frame={frame} edit={session.edit} onClose={() => setPin(undefined)} />}
    </main>
  );
}

type MenuAsked = PointerHandParts['onMenu'];
type KeyHandAsk = (hole: HoleId, parts: readonly PartId[], further?: readonly HeldParts[]) => void;

const pickConsequences = ({ plan, routing, analysis }: Frame) => ({ plan, routing, analysis });

const pickChange = ({ change }: Frame) => (change ? { change } : {});

/** The plan as it was before the change that is shown; `undefined` when there is none. */
function stateBefore({ change, routing }: Frame): Frame | undefined {
  const was = change?.beforePlan.routings.find(({ id }) => id === routing.id);
  return change && was
    ? { plan: change.beforePlan, routing: was, analysis: change.before, drags: [], mineInHand: false }
    : undefined;
}

/** Brings everything into view once, as soon as there is a plan and a place to draw it. */
function useFirstFit(viewpoint: ReturnType<typeof openViewpoint>, { plan, routing }: Frame): void {
  const size = useWatched(viewpoint.size);
  const done = useRef(false);
  useEffect(() => {
    if (done.current || size.width === 0 || size.height === 0) return;
    done.current = true;
    viewpoint.firstLook(plan, routing);
  }, [viewpoint, size, plan, routing]);
}
