import { memo } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';

interface ChoicesProps<Key extends string> {
  readonly label: string;
  readonly choices: readonly { readonly key: Key; readonly words: string }[];
  readonly chosen: Key;
  readonly onChoose: (key: Key) => void;
}

function ChoicesShown<Key extends string>({ label, choices, chosen, onChoose }: ChoicesProps<Key>) {
  return (
    <ToggleButtonGroup
      className="choices"
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[chosen]}
      onSelectionChange={(keys) => {
        const choice = choices.find(({ key }) => keys.has(key));
        if (choice) onChoose(choice.key);
      }}
    >
      {choices.map(({ key, words }) => (
        <ToggleButton key={key} id={key} className="choices__choice">
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

/** A few choices side by side, exactly one of them chosen. Not drawn again while nothing about it changes. */
export const Choices = memo(ChoicesShown) as typeof ChoicesShown;
