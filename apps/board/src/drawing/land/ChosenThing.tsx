import type { Site, SitePoint } from '@loopwright/model';
import { memo } from 'react';
import type { Selection, SiteThing } from '../../board/parts.ts';
import type { LandGrip } from '../../tools/land/land-grips.ts';
import { outlinesOf, sameOutline } from '../../tools/land/outlines-of.ts';
import { INKS } from '../inks.ts';
import { Circle, Group, Line, Path, Rect } from '../konva-shapes.ts';
import { toSheet, toSheetLine } from '../site-transform.ts';

interface ChosenThingProps {
  readonly site: Site;
  readonly selection: Selection;
  readonly grips: readonly LandGrip[];
  readonly scale: number;
}

/** The thing picked out on the land: its line drawn over, and what can be taken hold of on it. */
export const ChosenThing = memo(function ChosenThing({ site, selection, grips, scale }: ChosenThingProps) {
  const { thing, vertex } = selection;
  if (!thing) return null;
  const isChosen = ({ kind, outline, at }: LandGrip) =>
    kind === 'vertex' &&
    vertex !== undefined &&
    sameOutline(vertex.outline, outline) &&
    vertex.at.x === at.x &&
    vertex.at.y === at.y;
  const sign = signOf(site, thing);
  return (
    <Group listening={false}>
      <KeptAround site={site} thing={thing} />
      {outlinesOf(site, thing).map(({ outline, points, isClosed }) => (
        <ChosenLine key={JSON.stringify(outline)} points={points} isClosed={isClosed} />
      ))}
      {sign && <Ring at={sign} scale={scale} />}
      {grips.map((grip) => {
        const [x, y] = toSheet(grip.at);
        return (
          <Group key={`${grip.kind} ${x} ${y}`} x={x} y={y} scaleX={1 / scale} scaleY={1 / scale}>
            <GripSign grip={grip} isChosen={isChosen(grip)} />
          </Group>
        );
      })}
    </Group>
  );
});

/** Where the thing has a sign of its own. */
function signOf(site: Site, thing: SiteThing): SitePoint | undefined {
  if (thing.kind === 'mark') return site.marks.find(({ id }) => id === thing.id)?.at;
  if (thing.kind === 'base') return site.bases.find(({ id }) => id === thing.id)?.apron;
  if (thing.kind !== 'feature') return undefined;
  const geometry = site.features.find(({ id }) => id === thing.id)?.geometry;
  return geometry?.type === 'point' ? geometry.at : undefined;
}

const STEADY = { strokeScaleEnabled: false, perfectDrawEnabled: false, lineJoin: 'round' } as const;

const KEPT = 'rgba(138, 100, 16, 0.18)';

/** The ground that is kept around a feature: a band as wide on each side as its distance. */
function KeptAround({ site, thing }: { readonly site: Site; readonly thing: SiteThing }) {
  const feature = thing.kind === 'feature' ? site.features.find(({ id }) => id === thing.id) : undefined;
  if (!feature || feature.buffer <= 0) return null;
  const { geometry, buffer } = feature;
  const band = { stroke: KEPT, strokeWidth: 2 * buffer, lineJoin: 'round', lineCap: 'round' } as const;
  if (geometry.type === 'point') {
    const [x, y] = toSheet(geometry.at);
    return <Circle x={x} y={y} radius={buffer} fill={KEPT} perfectDrawEnabled={false} />;
  }
  const lines = geometry.type === 'line' ? [geometry.points] : geometry.rings;
  return lines.map((points, ring) => (
    <Line
      // biome-ignore lint/suspicious/noArrayIndexKey: the rings of an area go by their place
      key={ring}
      points={toSheetLine(points)}
      closed={geometry.type === 'area'}
      {...band}
      perfectDrawEnabled={false}
    />
  ));
}

/** Ink on paper, so that it is seen on an aerial too. */
function ChosenLine({ points, isClosed }: { readonly points: readonly SitePoint[]; readonly isClosed: boolean }) {
  const line = { points: toSheetLine(points), closed: isClosed, ...STEADY };
  return (
    <>
      <Line {...line} stroke={INKS.sheet} strokeWidth={5} />
      <Line {...line} stroke={INKS.ink} strokeWidth={2.2} />
    </>
  );
}

function Ring({ at, scale }: { readonly at: SitePoint; readonly scale: number }) {
  const [x, y] = toSheet(at);
  const ring = { x, y, radius: 16 / scale, ...STEADY };
  return (
    <>
      <Circle {...ring} stroke={INKS.sheet} strokeWidth={5} />
      <Circle {...ring} stroke={INKS.ink} strokeWidth={2} />
    </>
  );
}

const PEN = { stroke: INKS.ink, strokeWidth: 1.4, perfectDrawEnabled: false } as const;
const PLUS = 'M-3 0 H3 M0 -3 V3';
const FOUR_WAYS =
  'M-9 0 H9 M0 -9 V9 M-9 0 l3 -3 M-9 0 l3 3 M9 0 l-3 -3 M9 0 l-3 3 M0 -9 l-3 3 M0 -9 l3 3 M0 9 l-3 -3 M0 9 l3 -3';

/** A vertex is a square, the middle of an edge a small plus, all of it four arrows. */
function GripSign({ grip, isChosen }: { readonly grip: LandGrip; readonly isChosen: boolean }) {
  switch (grip.kind) {
    case 'vertex':
      return isChosen ? (
        <Rect x={-7} y={-7} width={14} height={14} fill={INKS.ink} stroke={INKS.sheet} strokeWidth={2} />
      ) : (
        <Rect x={-4.5} y={-4.5} width={9} height={9} fill={INKS.sheet} {...PEN} />
      );
    case 'edge':
      return (
        <>
          <Circle radius={6} fill={INKS.sheet} {...PEN} strokeWidth={1} />
          <Path data={PLUS} {...PEN} />
        </>
      );
    case 'whole':
      return (
        <>
          <Circle radius={13} fill={INKS.sheet} opacity={0.92} {...PEN} strokeWidth={1} />
          <Path data={FOUR_WAYS} {...PEN} lineCap="round" lineJoin="round" />
        </>
      );
  }
}
