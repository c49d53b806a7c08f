import type { Plan } from '@loopwright/model';
import type { Answer, CourseChoices, ReadNote } from './course-reader/contract.ts';

/** A course ready to become a board: nothing is sent before the person says so. */
export interface ReadyCourse {
  readonly plan: Plan;
  readonly notes: readonly ReadNote[];
}

/** Where a dropped file is on its way to a board. `problem` is one sentence with what to do; nothing is lost by it. */
export type ImportStep =
  | { readonly at: 'waiting'; readonly problem?: string }
  | { readonly at: 'reading'; readonly file: string }
  | { readonly at: 'choosing'; readonly file: string; readonly courses: CourseChoices['courses'] }
  | (ReadyCourse & { readonly at: 'ready'; readonly file: string; readonly name: string; readonly problem?: string })
  | (ReadyCourse & { readonly at: 'creating'; readonly file: string; readonly name: string });

/** What follows from the answer about a file. */
export function stepAfterReading(file: string, answer: Answer): ImportStep {
  switch (answer.kind) {
    case 'unreadable':
      return { at: 'waiting', problem: `${file}: ${answer.why}` };
    case 'courses':
      return { at: 'choosing', file, courses: answer.courses };
    case 'taken':
      return { at: 'ready', file, name: answer.plan.site.name, plan: answer.plan, notes: answer.notes };
  }
}

/** 'Ferrow links, 18 holes'. */
export function courseWords({ name, holes }: CourseChoices['courses'][number]): string {
  return `${name}, ${holes} ${holes === 1 ? 'hole' : 'holes'}`;
}

/** How many holes a plan has in its first routing, in the round and out of it. */
export function holesIn(plan: Plan): number {
  return plan.routings[0]?.holes.filter(({ seat }) => seat.in !== 'removed').length ?? 0;
}

/** A plan under the name the person gave the board. */
export function renamed(plan: Plan, name: string): Plan {
  const wanted = name.trim();
  return wanted === '' || wanted === plan.site.name ? plan : { ...plan, site: { ...plan.site, name: wanted } };
}

/** The one file of a drop, or the sentence that says why there is none. */
export function oneFile(files: readonly File[]): { readonly file: File } | { readonly problem: string } {
  const [file, ...more] = files;
  if (!file) return { problem: 'That was not a file: drop a GeoJSON course or a board file from your disk.' };
  if (more.length > 0)
    return { problem: `That was ${files.length} files: drop one at a time, each makes a board of its own.` };
  return { file };
}
