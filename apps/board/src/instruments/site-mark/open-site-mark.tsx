import { openSlot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { type MarkChoice, openMarkChoice, startSiteMark } from './start-site-mark.ts';

/** Marks green sites, tee sites and landing ground as they are found, before any hole. */
export function openSiteMark(): InstrumentEntry {
  const choice = openMarkChoice();
  const running = openSlot<{ refresh(): void } | undefined>(undefined);
  const onChoice = () => running.get()?.refresh();
  const options = () => <MarkOptions choice={choice} onChoice={onChoice} />;
  return {
    instrument: {
      name: 'site mark',
      title: 'Site mark',
      does: 'Marks a green site, a tee site or landing ground that the land offers.',
      start: (bench) => {
        const started = startSiteMark(bench, choice);
        running.set(started);
        return started;
      },
    },
    Options: options,
  };
}

const KINDS = [
  { key: 'green site', words: 'Green site' },
  { key: 'tee site', words: 'Tee site' },
  { key: 'landing ground', words: 'Landing ground' },
] as const;
const VERDICTS = [
  { key: 'natural', words: 'Natural' },
  { key: 'needs work', words: 'Needs work' },
] as const;

interface MarkOptionsProps {
  readonly choice: MarkChoice;
  readonly onChoice: () => void;
}

function MarkOptions({ choice, onChoice }: MarkOptionsProps) {
  const kind = useWatched(choice.kind);
  const verdict = useWatched(choice.verdict);
  return (
    <>
      <Choices
        label="What was found"
        choices={KINDS}
        chosen={kind}
        onChoose={(next) => {
          choice.kind.set(next);
          onChoice();
        }}
      />
      <Choices label="Verdict" choices={VERDICTS} chosen={verdict} onChoose={choice.verdict.set} />
    </>
  );
}
