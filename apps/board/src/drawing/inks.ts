import type { Severity } from '@loopwright/analysis';

/** The few colours of the drawing; each means something, none means it alone. The page's style sheet has the same. */
export const INKS = {
  paper: '#F4EEDF',
  sheet: '#FBF7EC',
  /** Paper under a line, so that it can be followed over the woods and water of an aerial; not seen on bare paper. */
  casing: 'rgba(251, 247, 236, 0.6)',
  rule: '#D9CFB8',
  ink: '#24313A',
  softInk: '#5A6670',
  play: '#2F6B4F',
  playFill: '#4B8364',
  corridor: 'rgba(47, 107, 79, 0.13)',
  water: '#C9D8D8',
  waterLine: '#7FA3B0',
  waterText: '#3D6270',
  trees: 'rgba(98, 126, 70, 0.20)',
  treesLine: '#6C7F4E',
  treesText: '#4C5F33',
  sand: '#E8D9A8',
  sandLine: '#A98F4C',
  stop: '#A63D1E',
  look: '#8A6410',
  mention: '#4F6475',
} as const;

export function severityInk(severity: Severity): string {
  return INKS[severity];
}

export const SERIF = "'Source Serif 4 Variable', 'Source Serif 4', Georgia, serif";
export const SANS = "'Source Sans 3 Variable', 'Source Sans 3', system-ui, sans-serif";
