import type { NamedEdit } from '@loopwright/document';
import { pointToMillimetre, type SiteMark, type SiteMarkId, type SitePoint } from '@loopwright/model';
import { openSlot, type Slot, type Watched } from '../../live/slot.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';

/** What the next mark is; kept for the next time the instrument is taken. */
export interface MarkChoice {
  readonly kind: Slot<SiteMark['kind']>;
  readonly verdict: Slot<SiteMark['verdict']>;
}

export const openMarkChoice = (): MarkChoice => ({
  kind: openSlot<SiteMark['kind']>('green site'),
  verdict: openSlot<SiteMark['verdict']>('natural'),
});

const FULL = 'The board took no further mark: it holds five hundred. Remove some that were given up.';

/** Marks what is found on the land, one press each. It stays in the hand: sites are found by the dozen. */
export function startSiteMark(bench: Bench, choice: MarkChoice): Running & { refresh(): void } {
  const promptNow = () => `Press where a ${choice.kind.get()} lies. Each press is one mark.`;
  const prompt = openSlot(promptNow());
  const picture = openSlot<InstrumentPicture>({});
  const entry: Watched<string> = openSlot('east, north of the mark');

  const edit = (id: SiteMarkId, at: SitePoint): NamedEdit => ({
    edit: 'add mark',
    mark: { id, kind: choice.kind.get(), at: pointToMillimetre(at), verdict: choice.verdict.get() },
  });
  const show = (at: SitePoint | undefined) =>
    picture.set(at ? { dots: [{ at, manner: 'new' }], atPointer: [choice.kind.get(), choice.verdict.get()] } : {});
  const write = (id: SiteMarkId) => {
    const result = bench.write();
    show(undefined);
    if (result === 'done') bench.select({ thing: { kind: 'mark', id } });
    else bench.say(FULL);
  };
  return {
    prompt,
    picture,
    entry,
    refresh: () => prompt.set(promptNow()),
    hover: ({ site }) => show(site),
    press: (start) => {
      const id = bench.freshId('m');
      const put = (at: SitePoint) => {
        show(at);
        bench.show(edit(id, at));
      };
      put(start.site);
      return placingGesture(start, {
        moveTo: ({ site }) => put(site),
        putBack: () => bench.show(undefined),
        letGo: () => write(id),
      });
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'length') return 'A mark lies at a place: type metres east and north, e.g. 120.5, 340.';
      const id = bench.freshId('m');
      bench.show(edit(id, read.at));
      return void write(id);
    },
    letGo: () => false,
    stop: () => bench.show(undefined),
  };
}
