/** One column of a table: its heading, and on which side its cells line up. */
export interface Column {
  readonly heading: string;
  readonly align: 'left' | 'right';
}

/** A row of cells, or a rule across the table. */
export type Row = readonly string[] | 'rule';

/** Lines of an aligned table: columns as wide as their widest cell, two spaces between. */
export function tableLines(columns: readonly Column[], rows: readonly Row[]): readonly string[] {
  const headings = columns.map(({ heading }) => heading);
  const cells = [headings, ...rows.filter((row) => row !== 'rule')];
  const widths = columns.map((_, index) => Math.max(...cells.map((row) => widthOf(row[index] ?? ''))));
  const line = (row: readonly string[]) =>
    columns
      .map(({ align }, index) => padded(row[index] ?? '', widths[index] ?? 0, align))
      .join('  ')
      .trimEnd();
  const rule = '─'.repeat(widths.reduce((sum, width) => sum + width, 0) + 2 * (widths.length - 1));
  return [line(headings), rule, ...rows.map((row) => (row === 'rule' ? rule : line(row)))];
}

const widthOf = (cell: string) => [...cell].length;

function padded(cell: string, width: number, align: Column['align']): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(cell)));
  return align === 'left' ? cell + space : space + cell;
}
