import { EXIT } from './exit-codes.ts';
import { readCourseText } from './read-file.ts';
import { run } from './run.ts';

// A reader that has seen enough (`| head`) closes the pipe: no fault of anybody.
process.stdout.on('error', () => process.exit(EXIT.ok));

try {
  process.exitCode = await run(process.argv.slice(2), {
    read: readCourseText,
    say: (text) => process.stdout.write(text),
    complain: (sentence) => process.stderr.write(`loopwright: ${sentence}\n`),
  });
} catch (error) {
  const what = error instanceof Error ? error.message : String(error);
  process.stderr.write(`loopwright: something went wrong that should not (${what}): please report it with the file.\n`);
  process.exitCode = EXIT.fault;
}
