// What each picture of a page cost, read from a Chromium trace: processor time of its main thread, not the clock's.

/** Categories to trace: few, so that tracing itself costs little. */
export const TRACED = ['devtools.timeline', 'v8.execute', 'v8'];

/** Work of scripts: what the browser runs of the page's own, layout that a script forced and collected garbage within. */
const SCRIPT = new Set([
  'EvaluateScript',
  'EventDispatch',
  'FireAnimationFrame',
  'FunctionCall',
  'RunMicrotasks',
  'TimerFire',
  'v8.callFunction',
  'v8.run',
]);

/** Ends what goes into one picture. */
const END = 'Layerize';

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread at its start, and spent in it, microseconds. */
  readonly tts?: number;
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly type?: string } };
}

const isMove = ({ name, args }: TraceEvent) => name === 'EventDispatch' && args?.data?.type === 'pointermove';

/** Milliseconds of script in each picture into which a move of the pointer went, in their order. */
export function scriptOfMoves(trace: Buffer): readonly number[] {
  const { traceEvents }: { traceEvents: readonly TraceEvent[] } = JSON.parse(trace.toString());
  const moved = traceEvents.find(isMove);
  if (!moved) return [];
  const work = traceEvents
    .filter(({ pid, tid, ph, name }) => pid === moved.pid && tid === moved.tid && ph === 'X' && wanted(name))
    .map((event) => ({ event, from: event.tts ?? 0, to: (event.tts ?? 0) + (event.tdur ?? 0) }))
    .sort((a, b) => a.from - b.from || b.to - a.to);
  const pictures: number[] = [];
  let [script, reached, moves] = [0, 0, 0];
  for (const { event, from, to } of work) {
    if (event.name === END) {
      if (moves > 0) pictures.push(script / 1000);
      [script, moves] = [0, 0];
      continue;
    }
    if (isMove(event)) moves += 1;
    // Pieces lie within each other: each microsecond counts once.
    script += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return pictures;
}

const wanted = (name: string) => name === END || SCRIPT.has(name);
