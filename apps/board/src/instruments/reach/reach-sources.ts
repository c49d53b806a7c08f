import { SETTINGS } from '@loopwright/model';

/** Where the distances of the arcs come from, and what they do not say. */
export const REACH_SOURCES: readonly string[] = [
  `Tee shot and second full shot: the model players of the board's limits, which can be changed there. ${SETTINGS['scratch-man-drive'].source}`,
  'Other clubs: a share of the driver, from The Modern Guide to Golf Club Fitting, as quoted in a public repository.',
  'Flat ground, no wind, sea level; carry and roll together. A model of a player: it does not say how far a ball can go.',
];
