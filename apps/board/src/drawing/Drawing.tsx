import type { NamedEdit, Person } from '@loopwright/document';
import type { CanvasPoint, HoleId, PartId, SitePoint } from '@loopwright/model';
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Change, Consequences, Reading, Select, Selection } from '../board/parts.ts';
import { openSlot, type Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { namesOf } from '../reading/names.ts';
import type { Hit } from '../tools/hit.ts';
import type { Hand } from '../tools/tool.ts';
import { usePointerHand } from '../tools/use-pointer-hand.ts';
import { toBadge } from './badge-view.ts';
import { Furniture } from './Furniture.tsx';
import { GroundLayer } from './GroundLayer.tsx';
import type { HoleState } from './HoleShape.tsx';
import { CorridorLayer, HoleLayer } from './HolesLayers.tsx';
import { Stage } from './konva-shapes.ts';
import { LiveLayer } from './LiveLayer.tsx';
import { PeoplePointers } from './PeoplePointers.tsx';
import { PointerBadge } from './PointerBadge.tsx';
import { useDrawingModel } from './use-drawing-model.ts';
import { useFontsReady } from './use-fonts-ready.ts';
import type { BlobAddress } from './use-site-images.ts';
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
  /** What is picked out, in words, for those who listen. */
  readonly spoken: string;
  /** Says that another state than the present one is shown. */
  readonly banner: string | undefined;
  /** What is said at the foot of the drawing. */
  readonly children: ReactNode;
  readonly select: Select;
  readonly drag: (edit: NamedEdit | undefined) => void;
  readonly drop: () => void;
  readonly point: (at: SitePoint | undefined) => void;
  readonly askAboutPin: (hole: HoleId, parts: readonly PartId[]) => void;
  readonly sayLocked: () => void;
  /** Gives the owner a way to cancel the press in progress. */
  readonly onHand: (cancel: () => boolean) => void;
}

/** The plan drawn: it fills the window, shows what is there and takes hold of it. */
export function Drawing(props: DrawingProps) {
  const { routing, selection, viewpoint, reading, change } = props;
  const surface = useRef<HTMLDivElement>(null);
  const view = useWatched(viewpoint.view);
  const size = useSurfaceSize(surface, viewpoint);
  const fonts = useFontsReady();
  const [hovered, setHovered] = useState<Hit>();
  const pointer = useMemo(() => openSlot<CanvasPoint>({ x: 0, y: 0 }), []);
  const model = useDrawingModel({ ...props, teeSet: reading.teeSet, scale: view.scale });
  const hand = useHand(props);
  const pointers = usePointerHand({
    surface,
    viewpoint,
    targets: model.targets,
    hand,
    onPoint: props.point,
    onHover: (hit) => setHovered((before) => (sameHit(before, hit) ? before : hit)),
    onPlace: pointer.set,
  });
  const { onHand } = props;
  useEffect(() => {
    onHand(() => {
      const held = pointers.isHolding();
      pointers.cancel();
      return held;
    });
  }, [onHand, pointers]);

  const hoveredHole = hovered && 'hole' in hovered ? hovered.hole : undefined;
  const stateOf = (hole: HoleId): HoleState =>
    hole === selection.hole ? 'selected' : hole === hoveredHole ? 'hovered' : 'plain';
  const badge = useMemo(
    () =>
      change && props.mineInHand && change.state === 'in progress'
        ? toBadge(change, namesOf(props.plan, routing, reading.units))
        : [],
    [change, props.mineInHand, props.plan, routing, reading.units],
  );
  const holes = { numbers: model.labels.numbers, teeSet: reading.teeSet, stateOf, scale: view.scale };
  const still = { ...holes, view, holes: model.stillHoles, walks: model.stillWalks, selectedWalk: selection.walk };

  return (
    <section className="plan" aria-label="The drawing">
      <div
        ref={surface}
        className="plan__surface"
        data-testid="drawing"
        data-view={`${view.scale} ${view.x} ${view.y}`}
        data-hover={hovered?.kind}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: as above
        tabIndex={0}
        aria-label="Drawing of the plan. The table of holes and points in the drawer says the same in words."
        aria-describedby="drawing-keys"
        onPointerDown={pointers.onPointerDown}
        onPointerMove={pointers.onPointerMove}
        onPointerUp={pointers.onPointerUp}
        onPointerCancel={pointers.onPointerCancel}
        onLostPointerCapture={pointers.onLostPointerCapture}
        onPointerLeave={pointers.onPointerLeave}
      >
        <Stage key={fonts ? 'with its letters' : 'without'} width={size.width} height={size.height} listening={false}>
          <GroundLayer
            site={props.plan.site}
            features={model.features}
            names={model.labels.names}
            view={view}
            blobAddress={props.blobAddress}
          />
          <CorridorLayer {...still} />
          <HoleLayer {...still} />
          <LiveLayer
            {...holes}
            view={view}
            holes={model.movingHoles}
            walks={model.movingWalks}
            selectedWalk={selection.walk}
            findings={model.targets.findings}
            findingPlaces={model.labels.findings}
            selectedFinding={selection.finding}
            selected={model.selectedHole}
            fansShown={props.findingsShown}
            ghosts={model.ghosts}
            people={props.roster}
          />
        </Stage>
        <PeoplePointers people={props.people} routing={routing.id} view={view} />
        <PointerBadge lines={badge} pointer={pointer} size={size} />
      </div>
      <Furniture scale={view.scale} units={reading.units} north={props.plan.site.north} />
      {props.banner && <p className="plan__banner">{props.banner}</p>}
      {props.children}
      <p id="drawing-keys" className="only-heard">
        Square brackets choose a hole, P a part of it, arrows move it. Question mark lists all keys.
      </p>
      <p className="only-heard" aria-live="polite">
        {props.spoken}
      </p>
    </section>
  );
}

const sameHit = (one: Hit | undefined, other: Hit | undefined): boolean =>
  one?.kind === other?.kind &&
  (one && 'hole' in one ? one.hole : undefined) === (other && 'hole' in other ? other.hole : undefined);

/** What the tools may do here. */
function useHand({ routing, select, drag, drop, viewpoint, askAboutPin, sayLocked }: DrawingProps): Hand {
  return useMemo(
    () => ({
      routing,
      drag,
      drop,
      letGo: () => drag(undefined),
      select,
      pan: viewpoint.pan,
      askAboutPin,
      sayLocked,
    }),
    [routing, select, drag, drop, viewpoint, askAboutPin, sayLocked],
  );
}
