import type { Routing } from '@loopwright/model';

/** 'Routing B' for a routing that is only lettered; one with a name goes by it. */
export function routingTitle({ name }: Pick<Routing, 'name'>): string {
  return /^[A-Za-z0-9]{1,2}$/.test(name.trim()) ? `Routing ${name.trim()}` : name;
}
