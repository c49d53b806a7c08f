import { type ReactNode, useId } from 'react';

interface FoldProps {
  readonly title: string;
  readonly count?: string;
  readonly open: boolean;
  readonly onToggle: () => void;
  readonly children: ReactNode;
}

/** A heading that opens and closes what stands under it. Nothing is drawn while it is closed. */
export function Fold({ title, count, open, onToggle, children }: FoldProps) {
  const inside = useId();
  return (
    <section className="fold">
      <h3 className="fold__heading">
        <button type="button" className="fold__button" aria-expanded={open} aria-controls={inside} onClick={onToggle}>
          <span className="fold__mark" aria-hidden="true">
            {open ? '▾' : '▸'}
          </span>
          {title}
          {count && <span className="fold__count">{count}</span>}
        </button>
      </h3>
      <div id={inside}>{open && children}</div>
    </section>
  );
}
