/** What a number in a survey file may count. The file never says: people are asked. */
export type MapUnit = 'metres' | 'US survey feet' | 'international feet';

/**
 * Metres in one of each, exact by definition.
 *
 * The two feet differ by 2 parts in a million: nothing on the ground, but over a metre in a coordinate of 600 km.
 * Source: NIST Special Publication 811 (2008), appendix B.6, for the US survey foot, 1200/3937 m, in use until 2022 and
 * in older state plane coordinates ever since; the agreement of 1959 for the international foot.
 */
export const METRES_PER_MAP_UNIT: Readonly<Record<MapUnit, number>> = {
  metres: 1,
  'US survey feet': 1200 / 3937,
  'international feet': 0.3048,
};

/** In the order a list offers them. */
export const MAP_UNITS: readonly MapUnit[] = ['metres', 'US survey feet', 'international feet'];
