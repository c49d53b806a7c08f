import type { Analysis, Finding, Ripple } from '@loopwright/analysis';
import type { NamedEdit, Person, PlanDocument, PresenceState, SavedState, UndoResult } from '@loopwright/document';
import type { Hole, Plan, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openBoardSession } from './board-session.ts';

/** A plan of one hole whose green is all that matters, and a document that only knows 'move part' of it. */
function hole(green: SitePoint): Hole {
  return {
    id: 'h1',
    seat: { in: 'loop', loop: 'l1', key: 'a' },
    tees: { back: { x: 0, y: 0 } },
    turnPoints: [],
    green: { centre: green, length: 30, width: 20, bearing: 0 },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: [],
  };
}

function planWith(only: Hole): Plan {
  return {
    loopwright: 1,
    site: { name: 'Invented links', north: 0, bases: [], marks: [], features: [], images: [] },
    teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
    routings: [
      {
        id: 'r1',
        name: 'A',
        locked: false,
        loops: [{ id: 'l1', name: 'Only', holes: ['h1'] }],
        rounds: [],
        holes: [only],
        spare: [],
      },
    ],
    settings: {},
    dispositions: [],
  };
}

const moveGreen = (to: SitePoint): NamedEdit => ({ edit: 'move part', routing: 'r1', hole: 'h1', part: 'green', to });

function fakeDocument() {
  let plan = planWith(hole({ x: 0, y: 300 }));
  const listeners = new Set<() => void>();
  const written: NamedEdit[] = [];
  const laid = (base: Plan, edit: NamedEdit) => (edit.edit === 'move part' ? planWith(hole(edit.to)) : base);
  const write = (edit: NamedEdit) => {
    plan = laid(plan, edit);
    for (const listener of listeners) listener();
  };
  const nothing: UndoResult = { kind: 'nothing' };
  const document: PlanDocument = {
    read: () => plan,
    readWith: (live) => live.reduce(laid, plan),
    edit: (edit) => {
      written.push(edit);
      write(edit);
      return 'done';
    },
    undo: () => nothing,
    redo: () => nothing,
    done: () => [],
    putBack: () => ({ kind: 'nothing' }),
    steps: () => ({}),
    unread: () => [],
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    state: () => new Uint8Array(),
    close: () => listeners.clear(),
  };
  return { document, written, write };
}

function fakeConnection() {
  let others: readonly Person[] = [];
  const said: PresenceState[] = [];
  const listeners = new Set<() => void>();
  const saved: SavedState = { kind: 'saved' };
  return {
    said,
    arrive: (now: readonly Person[]) => {
      others = now;
      for (const listener of listeners) listener();
    },
    connection: {
      presence: {
        client: 1,
        say: (state: PresenceState) => said.push(state),
        others: () => others,
        onChange: (listener: () => void) => {
          listeners.add(listener);
          return () => listeners.delete(listener);
        },
      },
      saved: () => saved,
      onSaved: () => () => false,
    },
  };
}

/** The hole's length stands for all figures: an analysis here is that one number, carried as a finding. */
function analyse(plan: Plan, routing: string): Analysis {
  const centre = plan.routings[0]?.holes[0]?.green?.centre ?? { x: 0, y: 0 };
  const finding: Finding = {
    key: 'length',
    code: 'length',
    severity: 'look',
    holes: ['h1'],
    features: [],
    measured: centre.y,
    limit: 0,
    unit: 'm',
    worse: 'more',
    setting: 'long-walk-look',
    place: { type: 'round' },
    detail: {},
    safety: false,
  };
  return { routing, holes: new Map(), walks: [], loops: [], rounds: [], findings: [finding] };
}
const measured = (analysis: Analysis | undefined) => analysis?.findings[0]?.measured;

function openTest() {
  const { document, written, write } = fakeDocument();
  const { connection, said, arrive } = fakeConnection();
  const pictures: (() => void)[] = [];
  const before = (work: () => void) => {
    pictures.push(work);
    return () => pictures.splice(pictures.indexOf(work), 1);
  };
  let compared = 0;
  const still: Ripple = { figures: [], findings: [] };
  const session = openBoardSession({
    plan: document,
    connection,
    openAnalysis: () => ({ analyse }),
    compare: () => {
      compared += 1;
      return still;
    },
    clock: { soon: before, later: before },
  });
  const picture = () => {
    for (const work of pictures.splice(0)) work();
  };
  return { session, written, write, said, arrive, picture, pictures, compared: () => compared };
}

const jo = (drag?: NamedEdit): Person => ({ client: 7, name: 'Jo', ink: 2, selection: [], ...(drag ? { drag } : {}) });

test('a drag shows its consequences and writes nothing until it is dropped, then once', () => {
  const { session, written, picture } = openTest();
  session.drag(moveGreen({ x: 0, y: 320 }));
  session.drag(moveGreen({ x: 0, y: 341 }));
  picture();
  expect(measured(session.frame.get()?.analysis)).toBe(341);
  expect(measured(session.frame.get()?.change?.before)).toBe(300);
  expect(written).toEqual([]);
  session.drop();
  picture();
  expect(written).toEqual([moveGreen({ x: 0, y: 341 })]);
  expect(session.frame.get()?.change).toMatchObject({ state: 'done' });
  expect(measured(session.frame.get()?.change?.before)).toBe(300);
  expect(measured(session.frame.get()?.change?.after)).toBe(341);
});

test('a cancelled drag leaves the plan, and what is shown, as it was', () => {
  const { session, written, picture } = openTest();
  session.drag(moveGreen({ x: 0, y: 341 }));
  picture();
  session.drag(undefined);
  picture();
  expect(written).toEqual([]);
  expect(measured(session.frame.get()?.analysis)).toBe(300);
  expect(session.frame.get()?.change).toBeUndefined();
});

test('many moves of the pointer within one picture are worked out once', () => {
  const { session, pictures, picture, compared } = openTest();
  for (let y = 301; y < 340; y++) session.drag(moveGreen({ x: 0, y }));
  expect(pictures).toHaveLength(1);
  picture();
  expect(compared()).toBe(1);
});

test("somebody else's drag is on this page with its consequences, and says whose it is", () => {
  const { session, arrive, picture } = openTest();
  arrive([jo(moveGreen({ x: 0, y: 280 }))]);
  picture();
  expect(measured(session.frame.get()?.analysis)).toBe(280);
  expect(session.frame.get()?.change).toMatchObject({ state: 'in progress', by: { name: 'Jo', ink: 2 } });
});

test("what somebody's drag did stays on the page after they let go, whichever message comes first", () => {
  const { session, arrive, write, picture } = openTest();
  const drag = moveGreen({ x: 0, y: 280 });
  arrive([jo(drag)]);
  picture();
  write(drag);
  arrive([jo()]);
  picture();
  expect(session.frame.get()?.change).toMatchObject({ state: 'done', by: { name: 'Jo' } });
  expect(measured(session.frame.get()?.change?.before)).toBe(300);
});

test('my own drag comes before anybody else’s, and theirs is in both sides of it', () => {
  const { session, arrive, picture } = openTest();
  arrive([jo(moveGreen({ x: 0, y: 280 }))]);
  session.drag(moveGreen({ x: 0, y: 350 }));
  picture();
  const change = session.frame.get()?.change;
  expect(change?.by).toBeUndefined();
  expect(measured(change?.before)).toBe(280);
  expect(measured(change?.after)).toBe(350);
});

test('pointers that move do not make the plan be worked out again', () => {
  const { session, arrive, picture } = openTest();
  const [roster, frame] = [session.roster.get(), session.frame.get()];
  arrive([{ ...jo(), pointer: { x: 1, y: 2 } }]);
  picture();
  const here = session.roster.get();
  expect(here).not.toBe(roster);
  arrive([{ ...jo(), pointer: { x: 5, y: 2 } }]);
  picture();
  expect(session.people.get()[0]?.pointer).toEqual({ x: 5, y: 2 });
  expect(session.roster.get()).toBe(here);
  expect(session.frame.get()).toBe(frame);
});

test('many words of others within one picture are worked out once', () => {
  const { session, arrive, picture, pictures, compared } = openTest();
  for (let y = 200; y < 240; y++) arrive([jo(moveGreen({ x: 0, y }))]);
  expect(pictures).toHaveLength(1);
  picture();
  expect(compared()).toBe(1);
  expect(measured(session.frame.get()?.analysis)).toBe(239);
});

test('the others see pointer, selection and drag together', () => {
  const { session, said } = openTest();
  session.point({ x: 3, y: 4 });
  session.select({ hole: 'h1' });
  session.drag(moveGreen({ x: 0, y: 310 }));
  expect(said.at(-1)).toEqual({
    pointer: { x: 3, y: 4 },
    selection: ['h1'],
    routing: 'r1',
    drag: moveGreen({ x: 0, y: 310 }),
  });
});
