import type { SavedState } from '@loopwright/document';
import { memo } from 'react';
import { savedWords } from './saved-words.ts';

/** Whether everything is saved, in truthful words. */
export const Saved = memo(function Saved({ saved }: { readonly saved: SavedState }) {
  const { mark, words, tone } = savedWords(saved);
  return (
    <p className={`saved saved--${tone}`} role="status" title={words}>
      <span aria-hidden="true">{mark}</span> <span className="saved__words">{words}</span>
    </p>
  );
});
