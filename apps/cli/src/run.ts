import { chosenCourse } from './chosen-course.ts';
import { parseCommand, type ReportCommand, USAGE } from './command.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import type { ReadFile } from './read-file.ts';
import { makeReport } from './report/make-report.ts';
import { reportText } from './text/report-text.ts';

/** What the command line needs from the machine. */
export interface Surroundings {
  read(path: string): Promise<ReadFile>;
  say(text: string): void;
  complain(sentence: string): void;
}

/** Does what the words after the program's name ask for. */
export async function run(words: readonly string[], around: Surroundings): Promise<ExitCode> {
  const command = parseCommand(words);
  if (command.kind === 'help') {
    around.say(USAGE);
    return EXIT.ok;
  }
  if (command.kind === 'wrong') {
    around.complain(command.why);
    return EXIT.usage;
  }
  return report(command, around);
}

async function report(command: ReportCommand, around: Surroundings): Promise<ExitCode> {
  const read = await around.read(command.file);
  const chosen = read.kind === 'text' ? chosenCourse(read.text, command) : read;
  if (chosen.kind === 'refused') {
    around.complain(chosen.why);
    return chosen.code;
  }
  const made = makeReport(chosen, command.units);
  around.say(
    command.format === 'json'
      ? `${JSON.stringify(made, undefined, 2)}\n`
      : reportText(made, chosen.routing.name, command.units),
  );
  return EXIT.ok;
}
