import { type Disposition, isFields, parseDisposition } from '@loopwright/model';
import type { Parts } from '../cells.ts';
import { frozen } from '../plain-value.ts';
import { partReader, type Read } from './part-reader.ts';

/** What was decided about one finding; its key names the routing and the finding. */
export function readDisposition(group: string, parts: Parts): Read<Disposition> {
  const reader = partReader(parts);
  const slash = group.indexOf('/');
  const routing = group.slice(0, slash);
  const finding = group.slice(slash + 1);
  const value = reader.take('', (untrusted) =>
    isFields(untrusted) ? parseDisposition({ ...untrusted, routing, finding }) : undefined,
  );
  return { value: frozen(value), order: '', unread: reader.unread() };
}
