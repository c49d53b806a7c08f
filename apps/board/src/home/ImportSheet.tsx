import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { ImportNotes } from './ImportNotes.tsx';
import { courseWords, holesIn, type ImportStep } from './import-step.ts';
import type { Import } from './use-import.ts';

/** What is asked about a dropped file: which course, which name; and what was noticed while it was taken in. */
export function ImportSheet({ importing }: { readonly importing: Import }) {
  const { step, choose, putAway } = importing;
  if (step.at === 'reading') return <p role="status">Reading {step.file} …</p>;
  if (step.at === 'choosing') {
    return (
      <section aria-label="Courses in the file" className="import">
        <h2 className="import__title">Which course?</h2>
        <p className="soft">{step.file} holds several. Each makes a board of its own.</p>
        <ul className="import__courses">
          {step.courses.map((course, index) => (
            <li key={`${course.name} ${course.holes}`}>
              <Button className="button" onPress={() => choose(index)}>
                {courseWords(course)}
              </Button>
            </li>
          ))}
        </ul>
        <Button className="button button--quiet" onPress={putAway}>
          Another file
        </Button>
      </section>
    );
  }
  if (step.at === 'waiting') return step.problem ? <Problem words={step.problem} /> : null;
  return <ReadyToCreate step={step} importing={importing} />;
}

/** What happened and what to do, in one sentence. */
export function Problem({ words }: { readonly words: string }) {
  return (
    <p className="problem" role="alert">
      {words}
    </p>
  );
}

interface ReadyToCreateProps {
  readonly step: Extract<ImportStep, { at: 'ready' | 'creating' }>;
  readonly importing: Import;
}

function ReadyToCreate({ step, importing }: ReadyToCreateProps) {
  const busy = step.at === 'creating';
  return (
    <section aria-label="The board to be made" className="import">
      <h2 className="import__title">
        {holesIn(step.plan)} holes from {step.file}
      </h2>
      <Form
        className="import__form"
        onSubmit={(event) => {
          event.preventDefault();
          importing.create();
        }}
      >
        <TextField className="field" value={step.name} onChange={importing.rename} maxLength={120} isDisabled={busy}>
          <Label className="field__label">Name of the board</Label>
          <Input className="input" />
        </TextField>
        <div className="row">
          <Button type="submit" className="button button--main" isDisabled={busy}>
            {busy ? 'Making the board …' : 'Make the board'}
          </Button>
          <Button className="button button--quiet" onPress={importing.putAway} isDisabled={busy}>
            Another file
          </Button>
        </div>
      </Form>
      {'problem' in step && step.problem && <Problem words={step.problem} />}
      <ImportNotes notes={step.notes} />
    </section>
  );
}
