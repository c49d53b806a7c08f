import type { Person } from '@loopwright/document';
import type { FindingKey, Site, SitePoint, SketchId } from '@loopwright/model';
import { memo } from 'react';
import type { Selection } from '../board/parts.ts';
import { inkOf } from '../board/people-inks.ts';
import { InstrumentPictureShape } from '../instruments/InstrumentPictureShape.tsx';
import type { InstrumentHand } from '../instruments/instrument-hand.ts';
import type { Grip } from '../tools/grip.ts';
import type { LandGrip } from '../tools/land/land-grips.ts';
import { discRadius } from './disc-radius.ts';
import { FanShapes } from './FanShapes.tsx';
import { FindingMarks } from './FindingMarks.tsx';
import type { FeatureView } from './feature-view.ts';
import type { FindingView } from './finding-view.ts';
import { GhostShape } from './GhostShape.tsx';
import { GripShapes, PartRings } from './GripShapes.tsx';
import { Corridor, Holes, type HolesProps, Walks } from './HolesLayers.tsx';
import type { HoleView } from './hole-view.ts';
import { Circle, Group, Layer } from './konva-shapes.ts';
import { ChosenThing } from './land/ChosenThing.tsx';
import { Features, LandShapes } from './land/LandShapes.tsx';
import type { LandShown } from './land/use-land.ts';
import { toSheet, type View } from './site-transform.ts';
import { SketchShapes } from './sketches/SketchShapes.tsx';
import type { SketchView } from './sketches/sketch-view.ts';
import type { WalkView } from './walk-view.ts';

interface LiveLayerProps extends HolesProps {
  readonly walks: readonly WalkView[];
  readonly selectedWalk: string | undefined;
  readonly view: View;
  readonly findings: readonly FindingView[];
  readonly findingPlaces: ReadonlyMap<FindingKey, SitePoint>;
  readonly selectedFinding: FindingKey | undefined;
  /** The hole picked out, for its fans and grips. */
  readonly selected: HoleView | undefined;
  readonly grips: readonly Grip[];
  readonly fansShown: boolean;
  /** Holes as they were before the drag in progress. */
  readonly ghosts: readonly HoleView[];
  readonly people: readonly Person[];
  readonly instruments: InstrumentHand | undefined;
  readonly isBareHand: boolean;
  /** Sketches in somebody's hands. */
  readonly sketches: readonly SketchView[];
  readonly selectedSketch: SketchId | undefined;
  readonly site: Site;
  readonly selection: Selection;
  /** Things on the land in somebody's hands, as they were, and what can be taken hold of on the one picked out. */
  readonly movingLand: LandShown | undefined;
  readonly landGhosts: readonly FeatureView[];
  readonly landGrips: readonly LandGrip[];
}

/** Everything that moves while somebody drags: it alone is drawn anew then. */
export function LiveLayer(props: LiveLayerProps) {
  const { view, holes, selected, findings, findingPlaces, people, numbers } = props;
  const { scale } = view;
  return (
    <Layer listening={false} x={view.x} y={view.y} scaleX={scale} scaleY={scale}>
      {props.landGhosts.length > 0 && (
        <Group opacity={0.35}>
          <Features features={props.landGhosts} scale={scale} />
        </Group>
      )}
      {props.movingLand && <LandShapes land={props.movingLand} scale={scale} />}
      {holes.map((hole) => (
        <Corridor key={hole.id} view={hole} />
      ))}
      {props.fansShown && selected && selected.fans.length > 0 && <FanShapes fans={selected.fans} scale={scale} />}
      {props.ghosts.map((ghost) => (
        <GhostShape key={ghost.id} view={ghost} />
      ))}
      <SketchShapes sketches={props.sketches} scale={scale} selected={props.selectedSketch} />
      <Walks walks={props.walks} selectedWalk={props.selectedWalk} scale={scale} />
      <Holes {...props} scale={scale} />
      {props.isBareHand && selected && <PartRings hole={selected} scale={scale} />}
      <ChosenThing site={props.site} selection={props.selection} grips={props.landGrips} scale={scale} />
      <GripShapes grips={props.grips} scale={scale} />
      {people.map((person) =>
        person.selection.map((hole) => (
          <SelectionRing key={`${person.client} ${hole}`} at={numbers.get(hole)} ink={person.ink} scale={scale} />
        )),
      )}
      {findings.length > 0 && (
        <FindingMarks findings={findings} places={findingPlaces} selected={props.selectedFinding} scale={scale} />
      )}
      {props.instruments && <InstrumentPictureShape hand={props.instruments} scale={scale} />}
    </Layer>
  );
}

interface SelectionRingProps {
  readonly at: SitePoint | undefined;
  readonly ink: number;
  readonly scale: number;
}

/** Somebody else has this hole picked out; their name stands at their pointer and in the head. */
const SelectionRing = memo(function SelectionRing({ at, ink, scale }: SelectionRingProps) {
  if (!at) return null;
  const [x, y] = toSheet(at);
  return (
    <Circle
      x={x}
      y={y}
      radius={(discRadius(scale) + 4) / scale}
      stroke={inkOf(ink).colour}
      strokeWidth={2.5}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
});
