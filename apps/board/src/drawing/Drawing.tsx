import type { NamedEdit, Person } from '@loopwright/document';
import type { CanvasPoint, HoleId, PartId, SitePoint } from '@loopwright/model';
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Change, Consequences, DoEdit, Reading, Select, Selection } from '../board/parts.ts';
import type { DayPicture } from '../day-start/day-picture.ts';
import type { DrawingTable } from '../instruments/drawing-table.ts';
import { openSlot, type Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { holesWords } from '../reading/holes-words.ts';
import { namesOf } from '../reading/names.ts';
import type { Hit } from '../tools/hit.ts';
import type { HeldParts } from '../tools/tool.ts';
import { type PointerHandParts, usePointerHand } from '../tools/use-pointer-hand.ts';
import { type BadgeLine, toBadge } from './badge-view.ts';
import { dragFigures } from './drag-figures.ts';
import { FrameShown } from './FrameShown.tsx';
import { Furniture } from './Furniture.tsx';
import { InstrumentBadge } from './InstrumentBadge.tsx';
import type { BlobAddress } from './images/ImagesLayer.tsx';
import { MoreButton } from './MoreButton.tsx';
import { PeoplePointers } from './PeoplePointers.tsx';
import { PlanStage } from './PlanStage.tsx';
import { PointerBadge } from './PointerBadge.tsx';
import { useDrawingModel } from './use-drawing-model.ts';
import { useHand } from './use-hand.ts';
import { useSurfaceSize } from './use-surface-size.ts';
import type { Viewpoint } from './viewpoint.ts';

export interface DrawingProps extends Consequences {
  readonly change: Change | undefined;
  /** Everybody's drags in progress, mine too. */
  readonly drags: readonly NamedEdit[];
  readonly mineInHand: boolean;
  readonly people: Watched<readonly Person[]>;
  readonly roster: readonly Person[];
  readonly selection: Selection;
  readonly reading: Reading;
  readonly findingsShown: boolean;
  readonly viewpoint: Viewpoint;
  readonly blobAddress: BlobAddress;
  /** Where things lay as the day began, while that is shown. */
  readonly dayStart: DayPicture | undefined;
  /** What is picked out, in words, for those who listen. */
  readonly spoken: string;
  /** Says that another state than the present one is shown. */
  readonly banner: string | undefined;
  /** What is said at the foot of the drawing. */
  readonly children: ReactNode;
  readonly select: Select;
  readonly drag: (edit: NamedEdit | undefined) => void;
  readonly drop: () => void;
  readonly edit: DoEdit;
  readonly say: (words: string) => void;
  readonly point: (at: SitePoint | undefined) => void;
  readonly askAboutPin: (hole: HoleId, parts: readonly PartId[], further?: readonly HeldParts[]) => void;
  readonly sayLocked: () => void;
  /** The instruments, once they are there. */
  readonly table: DrawingTable | undefined;
  /** The menu of a hole was asked for, at a place on the window. */
  readonly onMenu: PointerHandParts['onMenu'];
  /** Whether it is being asked which hole is meant. */
  readonly picks: () => boolean;
  /** Gives the owner a way to cancel the press in progress. */
  readonly onHand: (cancel: () => boolean) => void;
}

/** The plan drawn: it fills the window, shows what is there and takes hold of it. */
export function Drawing(props: DrawingProps) {
  const { routing, selection, viewpoint, reading } = props;
  const surface = useRef<HTMLDivElement>(null);
  const view = useWatched(viewpoint.view);
  const size = useSurfaceSize(surface, viewpoint);
  const [hovered, setHovered] = useState<Hit>();
  const pointer = useMemo(() => openSlot<CanvasPoint>({ x: 0, y: 0 }), []);
  const model = useDrawingModel({ ...props, teeSet: reading.teeSet, units: reading.units, scale: view.scale });
  const framed = useMemo(() => openSlot<readonly [SitePoint, SitePoint] | undefined>(undefined), []);
  const hand = useHand({
    ...props,
    site: props.plan.site,
    snap: props.table?.hand.snapVertex,
    holes: model.targets.holes,
    frame: framed.set,
  });
  const pointers = usePointerHand({
    surface,
    viewpoint,
    targets: model.targets,
    hand,
    instrument: props.table?.pointers,
    onPoint: props.point,
    onHover: (hit) => setHovered((before) => (sameHit(before, hit) ? before : hit)),
    onPlace: pointer.set,
    onMenu: props.onMenu,
    picks: props.picks,
  });
  const { onHand, table } = props;
  useEffect(
    () => table?.hand.lend({ hitAt: pointers.hitUnder, focus: () => surface.current?.focus({ preventScroll: true }) }),
    [table, pointers],
  );
  useEffect(() => {
    onHand(() => {
      const held = pointers.isHolding();
      pointers.cancel();
      return held;
    });
  }, [onHand, pointers]);

  const badge = useBadge(props);
  const figures = useFigures(props);
  const instrument = useHeldName(table);

  return (
    <section className="plan" aria-label="The drawing">
      <div
        ref={surface}
        className="plan__surface"
        data-testid="drawing"
        data-view={`${view.scale} ${view.x} ${view.y}`}
        data-hover={hovered?.kind === 'thing' ? `thing ${hovered.by}` : hovered?.kind}
        data-instrument={instrument}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes keys of its own, as a grid would
        tabIndex={0}
        aria-label="Drawing of the plan. The table of holes and points in the drawer says the same in words."
        aria-describedby="drawing-keys"
        onPointerDown={pointers.onPointerDown}
        onPointerMove={pointers.onPointerMove}
        onPointerUp={pointers.onPointerUp}
        onPointerCancel={pointers.onPointerCancel}
        onLostPointerCapture={pointers.onLostPointerCapture}
        onPointerLeave={pointers.onPointerLeave}
        onContextMenu={pointers.onContextMenu}
        onDoubleClick={pointers.onDoubleClick}
      >
        <PlanStage
          site={props.plan.site}
          model={model}
          viewpoint={viewpoint}
          selection={selection}
          hovered={hovered && 'hole' in hovered ? hovered.hole : undefined}
          reading={reading}
          findingsShown={props.findingsShown}
          roster={props.roster}
          blobAddress={props.blobAddress}
          dayStart={props.dayStart}
          instruments={table?.hand}
          isBareHand={instrument === undefined}
        />
        <FrameShown corners={framed} view={view} />
        <PeoplePointers people={props.people} routing={routing.id} view={view} />
        {table && instrument ? (
          <InstrumentBadge hand={table.hand} lines={badge} size={size} />
        ) : (
          <PointerBadge figures={figures} lines={badge} pointer={pointer} size={size} />
        )}
      </div>
      {model.moreAt && model.chosen.length > 0 && !props.mineInHand && !instrument && (
        <MoreButton
          at={model.moreAt}
          view={view}
          size={size}
          words={holesWords({ routing, names: namesOf(props.plan, routing, reading.units) }, model.chosen)}
          onMore={props.onMenu}
        />
      )}
      <Furniture scale={view.scale} units={reading.units} north={props.plan.site.north} />
      {props.banner && <p className="plan__banner">{props.banner}</p>}
      {props.children}
      <p id="drawing-keys" className="only-heard">
        Square brackets choose a hole, P a part of it, arrows move it, the menu key lists what can be done with it.
        Question mark lists all keys.
      </p>
      <p className="only-heard" aria-live="polite">
        {props.spoken}
      </p>
    </section>
  );
}

/** Drags by the pointer on the drawing; a bead in the hand says its worst beside itself. */
const ON_THE_DRAWING: ReadonlySet<NamedEdit['edit']> = new Set([
  'move part',
  'move hole',
  'move holes',
  'add turn point',
  'lengthen',
  'shape green',
  'set waypoints',
  'draw hole',
  'move vertex',
  'add vertex',
  'move outline',
  'draw boundary',
  'add features',
  'change feature',
  'change base',
]);

const NO_FIGURES: readonly string[] = [];

/** The figures that my drag in progress is changing. */
function useFigures({ drags, mineInHand, plan, routing, analysis, reading }: DrawingProps): readonly string[] {
  const mine = mineInHand ? drags.at(-1) : undefined;
  return useMemo(
    () => (mine ? dragFigures(mine, { plan, routing, analysis }, reading) : NO_FIGURES),
    [mine, plan, routing, analysis, reading],
  );
}

/** The worst gain and the worst loss of my drag in progress. */
function useBadge(props: DrawingProps): readonly BadgeLine[] {
  const { change, mineInHand, findingsShown, plan, routing } = props;
  const { units } = props.reading;
  const mine = mineInHand && findingsShown && (change?.edits ?? []).some(({ edit }) => ON_THE_DRAWING.has(edit));
  return useMemo(
    () => (change?.state === 'in progress' && mine ? toBadge(change, namesOf(plan, routing, units)) : []),
    [change, mine, plan, routing, units],
  );
}

const sameHit = (one: Hit | undefined, other: Hit | undefined): boolean =>
  one?.kind === other?.kind &&
  (one?.kind === 'thing' ? one.by : undefined) === (other?.kind === 'thing' ? other.by : undefined) &&
  (one && 'hole' in one ? one.hole : undefined) === (other && 'hole' in other ? other.hole : undefined);

const NOTHING_HELD = openSlot(undefined);

/** The name of the instrument in the hand; `undefined` for the bare hand. */
function useHeldName(table: DrawingTable | undefined) {
  return useWatched(table?.hand.held ?? NOTHING_HELD)?.entry.instrument.name;
}
