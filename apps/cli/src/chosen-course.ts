import { type Note, readCourseFile } from '@loopwright/formats';
import type { Plan, Routing } from '@loopwright/model';
import type { ReportCommand } from './command.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';

export type Chosen =
  | {
      readonly kind: 'chosen';
      readonly course: string;
      readonly plan: Plan;
      readonly routing: Routing;
      readonly notes: readonly Note[];
    }
  /** One sentence and the code to leave with. */
  | { readonly kind: 'refused'; readonly why: string; readonly code: ExitCode };

/** The course and routing that were asked for, out of a file's text. */
export function chosenCourse(text: string, command: ReportCommand): Chosen {
  const file = readCourseFile(text);
  if (file.kind === 'unreadable') return refused(file.why, EXIT.badFile);
  if (file.kind === 'board') {
    if (command.course !== undefined && !isSame(command.course, file.plan.site.name))
      return refused(
        `This board file holds one site, '${file.plan.site.name}', not '${command.course}': leave --course out.`,
        EXIT.usage,
      );
    return chosenRouting(file.plan, file.notes, command);
  }
  const index = courseIndex(file.courses, command.course);
  if (typeof index !== 'number') return index;
  const { plan, notes } = file.take(index);
  return chosenRouting(plan, notes, command);
}

function courseIndex(courses: readonly { readonly name: string }[], wanted: string | undefined): number | Chosen {
  const names = listed(courses.map(({ name }) => name));
  if (wanted === undefined) {
    if (courses.length === 1) return 0;
    return refused(`This file holds ${courses.length} courses: choose one with --course: ${names}.`, EXIT.usage);
  }
  const index = courses.findIndex(({ name }) => isSame(name, wanted));
  return index >= 0 ? index : refused(`No course here is called '${wanted}': there is ${names}.`, EXIT.usage);
}

function chosenRouting(plan: Plan, notes: readonly Note[], { routing: wanted }: ReportCommand): Chosen {
  const routing =
    wanted === undefined
      ? plan.routings[0]
      : plan.routings.find(({ id, name }) => isSame(name, wanted) || id === wanted);
  if (!routing)
    return refused(
      `No routing here is called '${wanted}': there is ${listed(plan.routings.map(({ name }) => name))}.`,
      EXIT.usage,
    );
  return { kind: 'chosen', course: plan.site.name, plan, routing, notes };
}

const isSame = (name: string, wanted: string) => name.toLowerCase() === wanted.trim().toLowerCase();

const listed = (names: readonly string[]) => names.map((name) => `'${name}'`).join(', ');

function refused(why: string, code: ExitCode): Chosen {
  return { kind: 'refused', why, code };
}
