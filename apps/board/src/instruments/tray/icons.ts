import type { InstrumentName } from '../instrument-name.ts';

/** Ink signs of the instruments on a field of 20 by 20; `fill` parts are filled, the rest is drawn as a line. */
export const ICONS: Readonly<Record<InstrumentName, { readonly line: string; readonly fill?: string }>> = {
  hand: { line: 'M5 3 L15 11 L10.5 11.7 L13 16.5 L11 17.5 L8.6 12.7 L5.4 15.6 Z' },
  'draw hole': {
    line: 'M3.5 16.5 L9 10 L15 6.5',
    fill: 'M2 15 h3.4 v3 h-3.4 z M15 6.5 m-3 0 a3.2 2.5 0 1 0 6.2 0 a3.2 2.5 0 1 0 -6.2 0',
  },
  'site mark': { line: 'M6 18 V3 L15 6.2 L6 9.5 M3.5 18 H8.5' },
  rod: {
    line: 'M3 15.5 L10 8.5 L17.5 5.5',
    fill: 'M3 15.5 m-1.8 0 a1.8 1.8 0 1 0 3.6 0 a1.8 1.8 0 1 0 -3.6 0 M10 8.5 m-1.4 0 a1.4 1.4 0 1 0 2.8 0 a1.4 1.4 0 1 0 -2.8 0',
  },
  reach: {
    line: 'M6.2 13.4 A4.5 4.5 0 0 1 9 16.5 M5.5 8.6 A9.5 9.5 0 0 1 13 15.5 M5 3.6 A14.5 14.5 0 0 1 17.5 14.8',
    fill: 'M4 16.5 m-1.6 0 a1.6 1.6 0 1 0 3.2 0 a1.6 1.6 0 1 0 -3.2 0',
  },
  'measure line': { line: 'M3 14.5 L17 5.5 M1.8 12.6 L4.2 16.4 M15.8 3.6 L18.2 7.4 M9 8.9 L11 12.1' },
  'measure area': { line: 'M3.5 15.5 L5.5 5 L14 3.5 L17 12 L10.5 16.5 Z M7 12.5 L12.5 7' },
  pencil: { line: 'M3.5 16.5 L4.7 12.6 L13.9 3.4 L16.6 6.1 L7.4 15.3 Z M12.2 5.1 L14.9 7.8' },
  'clearance ring': {
    line: 'M10 10 m-7 0 a7 7 0 1 0 14 0 a7 7 0 1 0 -14 0 M10 10 H17',
    fill: 'M10 10 m-1.6 0 a1.6 1.6 0 1 0 3.2 0 a1.6 1.6 0 1 0 -3.2 0',
  },
  boundary: { line: 'M3 5 L9 3 L17 6.5 L15.5 16 L5.5 17 Z M6 7.5 L6 7.6 M13.5 8.5 L13.5 8.6' },
  base: { line: 'M3 16.5 H17 M4.5 16.5 V9.5 L10 4.5 L15.5 9.5 V16.5 M8.5 16.5 V12 H11.5 V16.5' },
  feature: { line: 'M2.5 8 Q5 5.5 7.5 8 T12.5 8 T17.5 8 M2.5 13 Q5 10.5 7.5 13 T12.5 13 T17.5 13' },
  'scale image': { line: 'M3 4 H17 V16 H3 Z M6 12.5 L13.5 7 M6 10.8 V14.2 M13.5 5.3 V8.7' },
  north: { line: 'M10 2.5 L14 15.5 L10 12.5 L6 15.5 Z M10 2.5 V12.5' },
  waypoints: {
    line: 'M3 16 Q6 15 7 11.5 T11.5 8 T17 4',
    fill: 'M7 11.5 m-1.7 0 a1.7 1.7 0 1 0 3.4 0 a1.7 1.7 0 1 0 -3.4 0 M12.2 8 m-1.7 0 a1.7 1.7 0 1 0 3.4 0 a1.7 1.7 0 1 0 -3.4 0',
  },
  'green outline': { line: 'M4 12 C2.5 7 7 3.5 11 4.5 S18.5 8.5 16.5 13 S6 17.5 4 12 Z' },
};
