import type { SavedState } from '@loopwright/document';
import { closeWords } from '@loopwright/protocol';
import { memo } from 'react';
import { savedWords } from './saved-words.ts';

/** Whether everything is saved, in truthful words. */
export const Saved = memo(function Saved({ saved }: { readonly saved: SavedState }) {
  const { mark, words, tone } = savedWords(saved, closeWords);
  return (
    <p className={`saved saved--${tone}`} role="status" title={words}>
      <span aria-hidden="true">{mark}</span> <span className="saved__words">{words}</span>
    </p>
  );
});
