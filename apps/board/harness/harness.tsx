import { type Analysis, compareAnalyses, openAnalysis } from '@loopwright/analysis';
import { demoPlan } from '@loopwright/demo';
import { type NamedEdit, openPlan, type Person } from '@loopwright/document';
import { holeOf, type Plan } from '@loopwright/model';
import { StrictMode, useMemo, useState } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import type { Change, DrawerProps, Selection } from '../src/board/parts.ts';
import { Drawer } from '../src/drawer/Drawer.tsx';
import { GroundLine } from '../src/ground-line/GroundLine.tsx';
import { Head } from '../src/head/Head.tsx';
import { KeysSheet } from '../src/head/KeysSheet.tsx';
import { Home } from '../src/home/Home.tsx';
import { Round } from '../src/round/Round.tsx';
import '../src/style/index.css';

const PEOPLE: readonly Person[] = [
  { client: 2, name: 'Jo Oram', ink: 1, selection: [] },
  { client: 3, name: 'Rees Tal', ink: 2, selection: [] },
];

const board = openPlan();
const given = demoPlan();
board.edit({ edit: 'lay out plan', plan: given });
const analyser = openAnalysis();

/** A green moved 41 yd north-east, to have something that changed. */
function firstMove(plan: Plan): NamedEdit | undefined {
  const routing = plan.routings[0];
  const hole = routing?.loops[0]?.holes[5];
  const green = routing && hole && holeOf(routing, hole)?.green;
  if (!routing || !hole || !green) return undefined;
  const to = { x: green.centre.x + 26.5, y: green.centre.y + 26.5 };
  return { edit: 'move part', routing: routing.id, hole, part: 'green', to };
}

/** Moves the green about for 120 frames and says how long each took in script: analysis, views and React together. */
function DragMeasured({
  plan,
  onDrag,
}: {
  readonly plan: Plan;
  readonly onDrag: (edit: NamedEdit | undefined) => void;
}) {
  const [told, setTold] = useState('');
  const run = async () => {
    const times: number[] = [];
    const step = firstMove(plan);
    if (step?.edit !== 'move part') return;
    for (let frame = 0; frame < 120; frame += 1) {
      await new Promise(requestAnimationFrame);
      const before = performance.now();
      flushSync(() => onDrag({ ...step, to: { x: step.to.x + 30 * Math.sin(frame / 9), y: step.to.y + frame / 4 } }));
      times.push(performance.now() - before);
    }
    flushSync(() => onDrag(undefined));
    times.sort((a, b) => a - b);
    setTold(`median ${times[60]?.toFixed(1)} ms, p95 ${times[114]?.toFixed(1)} ms`);
  };
  return (
    <button type="button" className="button" onClick={run}>
      Drag green 6 about {told}
    </button>
  );
}

function Parts() {
  const [plan, setPlan] = useState(board.read());
  const [drag, setDrag] = useState<NamedEdit | undefined>();
  const [change, setChange] = useState<Change | undefined>();
  const [selection, select] = useState<Selection>({});
  const [reading, setReading] = useState({
    units: 'yards',
    teeSet: plan.teeSets[0]?.id ?? '',
  } as DrawerProps['reading']);
  const [findingsShown, setFindingsShown] = useState(true);
  const [shownRouting, setShownRouting] = useState('');
  const [keys, setKeys] = useState(false);
  const shown = useMemo(() => (drag ? board.readWith([drag]) : plan), [plan, drag]);
  const routing = shown.routings.find(({ id }) => id === shownRouting) ?? shown.routings[0];
  if (!routing) return <p>The demo has no routing.</p>;
  const analysis = analyser.analyse(shown, routing.id);
  const changeOf = (
    edits: readonly NamedEdit[],
    state: Change['state'],
    beforePlan: Plan,
    before: Analysis,
    after: Analysis,
  ) => ({
    edits,
    state,
    beforePlan,
    before,
    after,
    ripple: compareAnalyses(before, after),
  });
  const dragged = drag && changeOf([drag], 'in progress', plan, analyser.analyse(plan, routing.id), analysis);
  const edit = (step: NamedEdit) => {
    const before = board.read();
    board.edit(step);
    const after = board.read();
    setPlan(after);
    setChange(
      changeOf([step], 'done', before, analyser.analyse(before, routing.id), analyser.analyse(after, routing.id)),
    );
  };
  const undo = () => {
    board.undo();
    setPlan(board.read());
    setChange(undefined);
  };
  const latest = dragged ?? change;
  const all = {
    plan: shown,
    routing,
    analysis,
    reading,
    selection,
    findingsShown,
    people: PEOPLE.map((person, index) => ({ ...person, selection: [routing.loops[0]?.holes[index * 2] ?? ''] })),
    select,
    goTo: () => undefined,
    edit,
    preview: setDrag,
    take: () => undefined,
    say: () => undefined,
    more: () => undefined,
    ...(latest ? { change: latest } : {}),
  };
  const steps = board.steps();
  return (
    <div className="board">
      <Head
        siteName={plan.site.name}
        {...(plan.site.note ? { siteNote: plan.site.note } : {})}
        routing={routing}
        routings={plan.routings}
        teeSets={plan.teeSets}
        me={{ name: 'Ann Mary', ink: 0 }}
        people={all.people}
        saved={{ kind: 'saved' }}
        reading={reading}
        findingsShown={findingsShown}
        {...(steps.undo ? { undoStep: steps.undo } : {})}
        {...(steps.redo ? { redoStep: steps.redo } : {})}
        inviteLink="http://localhost/b/k3x9#secret"
        onUndo={undo}
        onRedo={() => undefined}
        onReading={setReading}
        onFindingsShown={setFindingsShown}
        done={board.done()}
        onPutBack={(from) => {
          board.putBack(from);
          setPlan(board.read());
        }}
        edit={edit}
        onRouting={setShownRouting}
        onFlip={() => undefined}
        goTo={() => undefined}
        onSaveFile={() => undefined}
        onKeys={() => setKeys(true)}
      />
      <Round {...all} />
      <main className="plan">
        <button
          type="button"
          className="button"
          onClick={() => {
            const step = firstMove(plan);
            if (step) edit(step);
          }}
        >
          Move green 6
        </button>
        <DragMeasured plan={plan} onDrag={setDrag} />
      </main>
      <GroundLine />
      <Drawer {...all} />
      {keys && <KeysSheet onClose={() => setKeys(false)} />}
    </div>
  );
}

const page = document.getElementById('page');
const home = window.location.search === '?home';
if (page) {
  createRoot(page).render(
    <StrictMode>
      {home ? (
        <Home
          createBoard={async () => ({ kind: 'refused', why: 'The server is full: nothing was made. Try again later.' })}
          openLink={() => undefined}
        />
      ) : (
        <Parts />
      )}
    </StrictMode>,
  );
}
