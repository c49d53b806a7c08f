import type { ReaderNames } from '@loopwright/analysis/wording';
import { cardLength, type LengthUnit, numberHoles, type Plan, type Routing } from '@loopwright/model';

/** What the sentences of a report call holes, features and measures. */
export function readerNames(plan: Plan, routing: Routing, units: LengthUnit): ReaderNames {
  const numbers = numberHoles(routing);
  const features = new Map<string, string>(plan.site.features.map(({ id, name, kind }) => [id, name ?? `the ${kind}`]));
  const bases = new Map<string, string>(plan.site.bases.map(({ id, name }) => [id, name]));
  return {
    number: (hole) => String(numbers.get(hole) ?? hole),
    feature: (id) => features.get(id) ?? bases.get(id) ?? id,
    length: (metres) => `${cardLength(metres, units)} ${units === 'yards' ? 'yd' : 'm'}`,
    angle: (degrees) => `${Math.round(degrees)}°`,
  };
}
