import './images.css';
import { Button, ProgressBar } from 'react-aria-components';
import { useWatched } from '../live/use-watched.ts';
import type { ImageImports } from './image-imports.ts';
import { fileCalled, type ImportStep, importWords, shareDone } from './import-step.ts';

interface ImportStripProps {
  readonly imports: ImageImports;
}

/** A picture on its way to the board, at the foot of the drawing: how far it is, and how to call it off. */
export function ImportStrip({ imports }: ImportStripProps) {
  const step = useWatched(imports.step);
  if (step.at === 'idle') return null;
  if (step.at === 'asking unit') return <UnitQuestion step={step} onCancel={imports.cancel} />;
  return step.at === 'failed' ? (
    <div className="import-strip import-strip--failed" role="alert">
      <p className="import-strip__words">{importWords(step)}</p>
      {step.again && (
        <Button className="button button--main" onPress={imports.again}>
          Try again
        </Button>
      )}
      <Button className="button" onPress={imports.dismiss}>
        Close
      </Button>
    </div>
  ) : (
    <div className="import-strip">
      <Progress step={step} />
      <Button className="button" onPress={imports.cancel}>
        Cancel
      </Button>
    </div>
  );
}

interface UnitQuestionProps {
  readonly step: Extract<ImportStep, { at: 'asking unit' }>;
  readonly onCancel: () => void;
}

/** Asks what a world file counts in; the widths it would give help to tell. */
function UnitQuestion({ step, onCancel }: UnitQuestionProps) {
  return (
    <section className="import-strip import-strip--question" aria-label="The unit of the world file" role="alert">
      <p>{importWords(step)}</p>
      <div className="row">
        {step.choices.map(({ unit, words }, index) => (
          <Button key={unit} className="button" autoFocus={index === 0} onPress={() => step.answer(unit)}>
            {words}
          </Button>
        ))}
      </div>
      <div className="row">
        <Button className="button button--quiet" onPress={() => step.answer('without')}>
          Lay it without its world file
        </Button>
        <Button className="button button--quiet" onPress={onCancel}>
          Cancel
        </Button>
      </div>
    </section>
  );
}

function Progress({ step }: { readonly step: Extract<ImportStep, { at: 'checking' | 'sending' }> }) {
  const share = shareDone(step);
  const words = importWords(step);
  return (
    <ProgressBar
      className="import-strip__progress"
      aria-label={`${fileCalled(step.name)} on its way to the board`}
      valueLabel={words}
      {...(share === undefined ? { isIndeterminate: true } : { value: share * 100 })}
    >
      <span className="import-strip__words">{words}</span>
      <span className="import-strip__bar">
        <span
          className={share === undefined ? 'import-strip__moving' : 'import-strip__done'}
          style={share === undefined ? undefined : { width: `${share * 100}%` }}
        />
      </span>
    </ProgressBar>
  );
}
