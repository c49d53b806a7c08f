export type LogFields = Readonly<Record<string, string | number | boolean | undefined>>;

/** What the server tells whoever runs it. Never a secret, a cookie or a body. */
export interface Log {
  info(event: string, fields?: LogFields): void;
  warn(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

/** One JSON line an event, for a person or a collector to read. */
export function jsonLog(write: (line: string) => void, now: () => number): Log {
  const at = (level: string) => (event: string, fields?: LogFields) =>
    write(`${JSON.stringify({ time: new Date(now()).toISOString(), level, event, ...fields })}\n`);
  return { info: at('info'), warn: at('warn'), error: at('error') };
}

/** The words of a failure, for a log line. */
export function reasonOf(failure: unknown): string {
  return failure instanceof Error ? failure.message : String(failure);
}
