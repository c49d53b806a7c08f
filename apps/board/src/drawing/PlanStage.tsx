import type { Person } from '@loopwright/document';
import type { HoleId, Plan } from '@loopwright/model';
import type { Reading, Selection } from '../board/parts.ts';
import type { DayPicture } from '../day-start/day-picture.ts';
import type { InstrumentHand } from '../instruments/instrument-hand.ts';
import { useWatched } from '../live/use-watched.ts';
import type { Grip } from '../tools/grip.ts';
import type { LandGrip } from '../tools/land/land-grips.ts';
import { GroundLayer } from './GroundLayer.tsx';
import { CorridorLayer, HoleLayer } from './HolesLayers.tsx';
import { type BlobAddress, ImagesLayer } from './images/ImagesLayer.tsx';
import { Stage } from './konva-shapes.ts';
import { LiveLayer } from './LiveLayer.tsx';
import type { DrawingModel } from './use-drawing-model.ts';
import { useFontsReady } from './use-fonts-ready.ts';
import type { Viewpoint } from './viewpoint.ts';

interface PlanStageProps {
  readonly site: Plan['site'];
  readonly model: DrawingModel;
  readonly viewpoint: Viewpoint;
  readonly selection: Selection;
  readonly hovered: HoleId | undefined;
  readonly reading: Reading;
  readonly findingsShown: boolean;
  readonly roster: readonly Person[];
  readonly blobAddress: BlobAddress;
  readonly dayStart: DayPicture | undefined;
  readonly instruments: InstrumentHand | undefined;
  /** No instrument is held: what can be taken hold of shows it. */
  readonly isBareHand: boolean;
}

const NO_GRIPS: readonly Grip[] = [];
const NO_LAND_GRIPS: readonly LandGrip[] = [];

/** The layers of the drawing, from the ground up: site, corridors and walks, holes, and what moves right now. */
export function PlanStage(props: PlanStageProps) {
  const { model, selection, hovered, reading } = props;
  const view = useWatched(props.viewpoint.view);
  const size = useWatched(props.viewpoint.size);
  const fonts = useFontsReady();
  const sketch = selection.thing?.kind === 'sketch' ? selection.thing.id : undefined;
  const manner = { teeSet: reading.teeSet, chosenHoles: model.chosen, hoveredHole: hovered, view };
  return (
    <Stage key={fonts ? 'with its letters' : 'without'} width={size.width} height={size.height} listening={false}>
      <ImagesLayer images={props.site.images} view={view} size={size} blobAddress={props.blobAddress} />
      <GroundLayer
        land={model.land.still}
        sketches={model.sketches.still}
        selectedSketch={sketch}
        dayStart={props.dayStart}
        names={model.labels.names}
        view={view}
      />
      <CorridorLayer holes={model.stillHoles} walks={model.stillWalks} selectedWalk={selection.walk} view={view} />
      <HoleLayer {...manner} holes={model.stillHoles} numbers={model.stillNumbers} />
      <LiveLayer
        {...manner}
        scale={view.scale}
        numbers={model.labels.numbers}
        selectedWalk={selection.walk}
        holes={model.movingHoles}
        site={props.site}
        selection={selection}
        movingLand={model.land.moving}
        landGhosts={model.land.ghosts}
        landGrips={props.isBareHand ? model.land.grips : NO_LAND_GRIPS}
        sketches={model.sketches.live}
        selectedSketch={sketch}
        walks={model.movingWalks}
        findings={model.targets.findings}
        findingPlaces={model.labels.findings}
        selectedFinding={selection.finding}
        selected={model.selectedHole}
        grips={(props.isBareHand && model.targets.grips?.grips) || NO_GRIPS}
        fansShown={props.findingsShown}
        ghosts={model.ghosts}
        people={props.roster}
        instruments={props.instruments}
        isBareHand={props.isBareHand}
      />
    </Stage>
  );
}
