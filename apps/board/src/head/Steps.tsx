import { memo, type ReactNode } from 'react';
import { Button, Tooltip, TooltipTrigger } from 'react-aria-components';

interface StepsProps {
  /** 'move of green 6'; empty when there is nothing. */
  readonly undo: string;
  readonly redo: string;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  /** Further ways back. */
  readonly children?: ReactNode;
}

/** One's own last step taken back or done again, each by its name. */
export function Steps({ undo, redo, onUndo, onRedo, children }: StepsProps) {
  return (
    <fieldset className="steps">
      <legend className="only-heard">One's own steps</legend>
      <Step mark="↶" verb="Undo" step={undo} onStep={onUndo} />
      {children}
      <Step mark="↷" verb="Redo" step={redo} onStep={onRedo} />
    </fieldset>
  );
}

interface StepProps {
  readonly mark: string;
  readonly verb: string;
  readonly step: string;
  readonly onStep: () => void;
}

const Step = memo(function Step({ mark, verb, step, onStep }: StepProps) {
  const words = step ? `${verb} ${step}` : `Nothing to ${verb.toLowerCase()}`;
  return (
    <TooltipTrigger delay={400}>
      <Button className="button button--quiet steps__step" aria-label={words} isDisabled={!step} onPress={onStep}>
        <span aria-hidden="true">{mark}</span>
      </Button>
      <Tooltip className="tooltip">{words}</Tooltip>
    </TooltipTrigger>
  );
});
