/** Everything a person can hold; the hand is the bare hand. */
export type InstrumentName =
  | 'hand'
  | 'draw hole'
  | 'site mark'
  | 'rod'
  | 'reach'
  | 'measure line'
  | 'measure area'
  | 'pencil'
  | 'clearance ring'
  | 'boundary'
  | 'base'
  | 'feature'
  | 'scale image'
  | 'north'
  | 'waypoints'
  | 'green outline';
