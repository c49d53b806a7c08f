import type { BadgeLine } from './badge-view.ts';

/** Worst gain and worst loss, a line each. */
export function BadgeLines({ lines }: { readonly lines: readonly BadgeLine[] }) {
  return lines.map((line) => (
    <li key={line.tone + line.text} className={`badge__line badge__line--${line.tone}`}>
      <span aria-hidden="true">{line.sign}</span> {line.text}
    </li>
  ));
}
