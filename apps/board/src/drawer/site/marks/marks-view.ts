import type { MarkUse, MarkUses } from '@loopwright/analysis';
import type { HoleId, LengthUnit, Plan, RoutingId, SiteMark } from '@loopwright/model';
import { type Names, namesOf } from '../../../reading/names.ts';

/** Which marks are listed: all, those no hole of any routing has taken up, or those of one routing. */
export type MarkFilter = 'all' | 'unused' | `routing ${string}`;

/** A hole that has taken a mark up, in words, and where to find it. */
export interface MarkUseRow {
  readonly routing: RoutingId;
  readonly hole: HoleId;
  /** 'green of hole 4, routing A, 3 m off'. */
  readonly words: string;
}

export interface MarkRow {
  readonly id: string;
  readonly title: string;
  readonly what: string;
  readonly uses: readonly MarkUseRow[];
}

/** The marks of a site in the order of the list: green sites first, then tee sites, then landing ground. */
export function markRows(plan: Plan, uses: MarkUses, filter: MarkFilter, units: LengthUnit): readonly MarkRow[] {
  const names = new Map(plan.routings.map((routing) => [routing.id, namesOf(plan, routing, units)]));
  return KINDS.flatMap((kind) => plan.site.marks.filter((mark) => mark.kind === kind))
    .filter(({ id }) => isShown(uses.get(id) ?? [], filter))
    .map((mark) => toRow(mark, uses.get(mark.id) ?? [], { plan, names }));
}

export const KINDS: readonly SiteMark['kind'][] = ['green site', 'tee site', 'landing ground'];

function isShown(uses: readonly MarkUse[], filter: MarkFilter): boolean {
  if (filter === 'all') return true;
  if (filter === 'unused') return uses.length === 0;
  return uses.some(({ routing }) => `routing ${routing}` === filter);
}

interface Source {
  readonly plan: Plan;
  readonly names: ReadonlyMap<RoutingId, Names>;
}

function toRow(mark: SiteMark, uses: readonly MarkUse[], source: Source): MarkRow {
  const rows = uses.map((use) => toUseRow(use, source));
  const used = rows.length === 0 ? 'no hole uses it yet' : rows.map(({ words }) => words).join('; ');
  return {
    id: mark.id,
    title: mark.note ? `${KIND_WORDS[mark.kind]}: ${mark.note}` : KIND_WORDS[mark.kind],
    what: `${mark.verdict}; ${used}`,
    uses: rows,
  };
}

export const KIND_WORDS: Readonly<Record<SiteMark['kind'], string>> = {
  'green site': 'Green site',
  'tee site': 'Tee site',
  'landing ground': 'Landing ground',
};

function toUseRow({ routing, hole, part, distance }: MarkUse, { plan, names }: Source): MarkUseRow {
  const own = names.get(routing);
  const several = plan.routings.length > 1;
  const name = plan.routings.find(({ id }) => id === routing)?.name ?? '';
  const number = own?.number(hole) ?? '';
  const off = distance < 1 ? '' : `, ${own?.length(distance) ?? ''} off`;
  const what = part.startsWith('tee:') ? 'tee' : part;
  return { routing, hole, words: `${what} of hole ${number}${several ? `, ${name}` : ''}${off}` };
}
