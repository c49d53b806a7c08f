import type { DispositionKind, RoutingId } from '@loopwright/model';
import { useId, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { dispositionKinds, MOST_WORDS, WORDS_WANTED } from './disposition-kinds.ts';
import type { FindingView } from './findings-view.ts';

interface DispositionFormProps {
  readonly view: FindingView;
  readonly routing: RoutingId;
  readonly edit: DoEdit;
  readonly onDone: () => void;
}

/** What is decided about a finding. It comes back by itself when the measured value gets clearly worse. */
export function DispositionForm({ view, routing, edit, onDone }: DispositionFormProps) {
  const group = useId();
  const kinds = dispositionKinds(view);
  const [kind, setKind] = useState<DispositionKind>('to be checked by');
  const [words, setWords] = useState('');
  const decide = () => {
    const { key, measured } = view.finding;
    edit({ edit: 'decide', disposition: { routing, finding: key, kind, words: words.trim(), measured } });
    onDone();
  };
  return (
    <Form
      className="disposition"
      aria-label={`Decide about: ${view.title}`}
      onSubmit={(event) => {
        event.preventDefault();
        decide();
      }}
    >
      <fieldset className="disposition__kinds">
        <legend className="field__label">What is decided</legend>
        {kinds.map((each) => (
          <label key={each} className="disposition__kind">
            <input type="radio" name={group} checked={kind === each} onChange={() => setKind(each)} /> {each}
          </label>
        ))}
      </fieldset>
      <TextField className="field" value={words} onChange={setWords} maxLength={MOST_WORDS} isRequired autoFocus>
        <Label className="field__label">
          {kind} … ({WORDS_WANTED[kind]})
        </Label>
        <Input className="input" />
      </TextField>
      <div className="row">
        <Button type="submit" className="button button--small button--main" isDisabled={words.trim() === ''}>
          Keep the decision
        </Button>
        <Button className="button button--small button--quiet" onPress={onDone}>
          Cancel
        </Button>
      </div>
    </Form>
  );
}
