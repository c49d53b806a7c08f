import type { ReactNode } from 'react';

interface WideTableProps {
  readonly label: string;
  readonly children: ReactNode;
}

/** A table that may be wider than its sheet: it scrolls sideways by itself, by keys too. */
export function WideTable({ label, children }: WideTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keys
    <section className="table-scroll" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
