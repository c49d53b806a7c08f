import type { Plan } from '@loopwright/model';
import { closeWords, type EnterAnswer } from '@loopwright/protocol';
import { useEffect, useMemo, useState } from 'react';
import { DropOnBoard } from '../home/DropOnBoard.tsx';
import { useImageImports } from '../images/use-image-imports.ts';
import { createBoard } from '../live/board-api.ts';
import { readKept, writeKept } from '../live/kept.ts';
import { type LiveBoard, openLiveBoard } from '../live/open-live-board.ts';
import { saveBoardFile } from '../live/save-board-file.ts';
import { openSlot, type Slot } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { enterKept } from '../offline/enter-kept.ts';
import { keepPage } from '../offline/keep-page.ts';
import { BoardScreen } from './BoardScreen.tsx';
import { AskName, Closed, Door } from './Door.tsx';
import type { HomeProps } from './parts.ts';
import { startRoutingEdit } from './start-routing.ts';

interface BoardPageProps {
  readonly board: string;
  /** From the fragment of the address: it reaches the server only in the body of a request. */
  readonly secret: string;
  readonly openLink: HomeProps['openLink'];
  /** Pictures on their way to this board. */
  readonly incoming: Slot<readonly File[]>;
}

type Stage =
  | { readonly kind: 'asking' }
  | { readonly kind: 'knocking' }
  | { readonly kind: 'outside'; readonly why: string }
  | { readonly kind: 'inside'; readonly answer: EnterAnswer };

const UNREACHED = 'The server did not answer. Nothing was lost; check the connection and try again.';

/** A board by its link: the name is asked once, the link's secret exchanged for a cookie, then the board opens. */
export function BoardPage({ board, secret, openLink, incoming }: BoardPageProps) {
  const [name, setName] = useState(readKept('name'));
  const [stage, setStage] = useState<Stage>(name === undefined ? { kind: 'asking' } : { kind: 'knocking' });
  useEffect(() => {
    if (stage.kind === 'inside') keepPage();
    if (stage.kind !== 'knocking' || name === undefined) return undefined;
    let here = true;
    void enterKept(board, secret, name).then((entered) => {
      if (!here) return;
      if (entered.kind === 'entered') setStage({ kind: 'inside', answer: entered.answer });
      else setStage({ kind: 'outside', why: entered.kind === 'refused' ? entered.why : UNREACHED });
    });
    return () => {
      here = false;
    };
  }, [stage, board, secret, name]);
  const featuresFile = useMemo(() => openSlot<File | undefined>(undefined), []);
  const knock = () => setStage({ kind: 'knocking' });
  const introduce = (given: string) => {
    writeKept('name', given);
    setName(given);
    knock();
  };
  if (stage.kind === 'asking') return <AskName onName={introduce} />;
  if (stage.kind === 'knocking') return <Door title="Opening the board …" />;
  if (stage.kind === 'outside') return <Door title="The board did not open" words={stage.why} onAgain={knock} />;
  return (
    <DropOnBoard createBoard={createBoard} openLink={openLink} onPictures={incoming.set} onFeatures={featuresFile.set}>
      <OpenBoard answer={stage.answer} incoming={incoming} featuresFile={featuresFile} />
    </DropOnBoard>
  );
}

interface Closing {
  readonly code: number;
  readonly draft: Plan | undefined;
}

interface OpenBoardProps extends Pick<BoardPageProps, 'incoming'> {
  readonly answer: EnterAnswer;
  /** A file of what lies on the land, on its way to this board. */
  readonly featuresFile: Slot<File | undefined>;
}

function OpenBoard({ answer, incoming, featuresFile }: OpenBoardProps) {
  const [live, setLive] = useState<LiveBoard>();
  const [closing, setClosing] = useState<Closing>();
  useEffect(() => {
    const opened = openLiveBoard(answer, window.location);
    const stop = opened.onClosed((code, draft) => setClosing({ code, draft }));
    setLive(opened);
    return () => {
      stop();
      opened.close();
    };
  }, [answer]);
  if (!live) return <Door title="Opening the board …" />;
  return (
    <>
      <Inside live={live} answer={answer} incoming={incoming} featuresFile={featuresFile} />
      {closing && (
        <Closed
          words={closeWords(closing.code)}
          {...(closing.draft
            ? { onDraft: () => void (closing.draft && saveBoardFile(closing.draft, 'draft.loopwright.json')) }
            : {})}
        />
      )}
    </>
  );
}

function Inside({ live, answer, incoming, featuresFile }: OpenBoardProps & { readonly live: LiveBoard }) {
  const { session } = live;
  const frame = useWatched(session.frame);
  const saved = useWatched(session.saved);
  const blobs = `/api/boards/${encodeURIComponent(answer.board)}/blobs/`;
  const own = useMemo(() => new Map<string, Blob>(), []);
  const blobAddress = useMemo(() => (hash: string) => own.get(hash) ?? blobs + encodeURIComponent(hash), [own, blobs]);
  const imports = useImageImports({ session, address: blobs, incoming, own });
  const me = useMemo(() => ({ name: answer.name, ink: answer.ink }), [answer]);
  if (frame) {
    return (
      <BoardScreen
        session={session}
        frame={frame}
        me={me}
        inviteLink={window.location.href}
        blobAddress={blobAddress}
        dayKey={`${answer.board} ${answer.membership}`}
        imports={imports}
        featuresFile={featuresFile}
      />
    );
  }
  if (saved.kind === 'joining') return <Door title="Fetching the plan …" />;
  const words =
    'There is no routing on it yet. Start one to draw on, or drop a course file here: it becomes a board of its own.';
  const start = () => session.edit(startRoutingEdit(session.writtenPlan.get()));
  return <Door title="An empty board" words={words} onAgain={start} again="Start a routing" />;
}
