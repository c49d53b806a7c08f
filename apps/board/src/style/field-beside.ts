/** Goes from a field of a table to the one above or under it, over rows that have none; stays at the ends. */
export function fieldBeside(field: HTMLElement, step: 1 | -1): void {
  const cell = field.closest('td');
  const table = field.closest('table');
  if (!cell || !table) return;
  const column = [...table.querySelectorAll<HTMLTableRowElement>('tr')].flatMap((row) => {
    const found = row.cells[cell.cellIndex]?.querySelector<HTMLElement>('input, select');
    return found ? [found] : [];
  });
  column[column.indexOf(field) + step]?.focus();
}
