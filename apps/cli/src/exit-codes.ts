/** What the command line answers to whoever started it. Documented in README.md. */
export const EXIT = {
  /** The report was written. Findings do not change this: they are for people to judge. */
  ok: 0,
  /** The command cannot be understood, or names a course or routing that is not in the file. */
  usage: 2,
  /** The file cannot be opened. */
  noFile: 3,
  /** The file was read but is no board and no course. */
  badFile: 4,
  /** A fault of ours. */
  fault: 70,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
