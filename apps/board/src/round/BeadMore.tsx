import { memo } from 'react';
import { Button } from 'react-aria-components';

interface BeadMoreProps {
  /** What is chosen: 'hole 6', '3 holes'. */
  readonly words: string;
  readonly onMore: (at: { readonly x: number; readonly y: number }) => void;
}

/** Opens the menu of what is chosen, beside its bead. */
export const BeadMore = memo(function BeadMore({ words, onMore }: BeadMoreProps) {
  return (
    <Button
      className="bead__more"
      aria-label={`What to do with ${words}`}
      aria-haspopup="menu"
      onPress={({ target }) => {
        const box = target.getBoundingClientRect();
        onMore({ x: box.left, y: box.bottom });
      }}
    >
      ⋯
    </Button>
  );
});
