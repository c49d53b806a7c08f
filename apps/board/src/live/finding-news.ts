import type { Analysis, FindingChange } from '@loopwright/analysis';
import type { Stop } from '@loopwright/document';
import type { Frame } from './frame.ts';
import { openSlot, type Watched } from './slot.ts';

/** How long everything must lie still before it is told, in milliseconds: a drag is told where it rests. */
export const AT_REST = 400;
/** Told at the latest so long after it came while others go on dragging: a crowd never rests. */
export const AT_THE_LATEST = 5000;

/** Findings that came and went since the last news, with the frame they are told of. */
export interface FindingNews {
  readonly changes: readonly FindingChange[];
  readonly frame: Frame;
}

export interface FindingNewsParts {
  readonly frame: Watched<Frame | undefined>;
  readonly compare: (before: Analysis, after: Analysis) => readonly FindingChange[];
  /** Does work after so many milliseconds, unless stopped. */
  readonly after: (milliseconds: number, work: () => void) => Stop;
}

/**
 * What came and went, gathered for those who listen: my own step at once, a drag and what others do once it rests.
 * Always against what was told last, so that a drag put back tells nothing, and nothing is told twice.
 */
export function openFindingNews({ frame, compare, after }: FindingNewsParts) {
  const news = openSlot<FindingNews | undefined>(undefined);
  let told = frame.get()?.analysis;
  let mine = frame.get()?.change?.edits;
  let rest: Stop | undefined;
  let latest: Stop | undefined;

  const still = () => {
    rest?.();
    latest?.();
    rest = undefined;
    latest = undefined;
  };
  const tell = () => {
    still();
    const now = frame.get();
    if (!now || !told) return;
    const changes = compare(told, now.analysis);
    told = now.analysis;
    if (changes.length > 0) news.set({ changes, frame: now });
  };
  const tellInTime = () => {
    latest = undefined;
    if (!frame.get()?.mineInHand) tell();
  };
  const onFrame = () => {
    const now = frame.get();
    if (!now || now.figuresToCome) return;
    if (told?.routing !== now.analysis.routing) {
      // Another routing is read anew, not told as a change.
      still();
      told = now.analysis;
      mine = now.change?.edits;
      return;
    }
    const { change } = now;
    const isMyStep = change?.state === 'done' && !change.by && change.edits !== mine;
    if (isMyStep) mine = change.edits;
    if (isMyStep && !now.mineInHand) return tell();
    if (told === now.analysis) return;
    rest?.();
    rest = after(AT_REST, tell);
    latest ??= after(AT_THE_LATEST, tellInTime);
  };
  const stop = frame.onChange(onFrame);
  return {
    news,
    stop: () => {
      stop();
      still();
    },
  };
}
