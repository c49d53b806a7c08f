import type { NamedEdit } from '@loopwright/document';
import { type Feature, type Plan, presetOf } from '@loopwright/model';
import { PLAN, ROUTING } from './two-holes.test-plan.ts';

/** A name as long as a plan may hold one, of letters that take two units each. */
export const LONG = '\u{1D4D0}'.repeat(80);

const at = { x: 0, y: 0 };
const of = { routing: 'a', hole: 'h1' } as const;
const loop = { id: 'new', name: LONG };
const ring = [at, { x: 9, y: 0 }, { x: 9, y: 9 }];
const feature: Feature = {
  id: 'pond',
  kind: 'water',
  name: LONG,
  geometry: { type: 'point', at },
  ...presetOf('water'),
};
const outline = { of: 'feature', feature: 'pond', ring: 0 } as const;
const image = {
  id: 'aerial',
  blob: 'f'.repeat(64),
  widthPixels: 10,
  heightPixels: 10,
  opacity: 1,
  name: LONG,
} as const;

/** One of every edit there is; the compiler asks for each. */
const BY_NAME: { readonly [Name in NamedEdit['edit']]: Extract<NamedEdit, { readonly edit: Name }> } = {
  'draw hole': { edit: 'draw hole', ...of, seat: 'spare', tees: { back: at }, turnPoints: [] },
  'copy hole': { edit: 'copy hole', ...of, as: 'h9', by: at },
  'remove hole': { edit: 'remove hole', ...of },
  'move part': { edit: 'move part', ...of, part: 'green', to: at },
  'move hole': { edit: 'move hole', ...of, by: at },
  'move holes': { edit: 'move holes', routing: 'a', holes: ['h1', 'h2'], by: at },
  'add turn point': { edit: 'add turn point', ...of, turn: 't1', at, place: 0 },
  'remove turn point': { edit: 'remove turn point', ...of, turn: 't1' },
  lengthen: { edit: 'lengthen', ...of, end: 'green', by: 12 },
  'shape green': { edit: 'shape green', ...of, shape: { length: 30, width: 20, bearing: 0 } },
  'propose tee': { edit: 'propose tee', ...of, teeSet: 'back' },
  'set waypoints': { edit: 'set waypoints', ...of, waypoints: [at] },
  'set corridor': { edit: 'set corridor', ...of, corridor: { tee: 20 } },
  'reverse hole': { edit: 'reverse hole', ...of },
  'exchange corridors': { edit: 'exchange corridors', ...of, with: 'h2' },
  'move in the round': { edit: 'move in the round', ...of, loop: 'front', after: 'first' },
  'take out': { edit: 'take out', ...of },
  'bring back': { edit: 'bring back', ...of, loop: 'front', after: 'first' },
  'swap places': { edit: 'swap places', ...of, with: 'h2' },
  'set par': { edit: 'set par', ...of, sex: 'men', par: 4 },
  judge: { edit: 'judge', ...of, verdict: 'weak', reason: LONG },
  pin: { edit: 'pin', ...of, part: 'green' },
  unpin: { edit: 'unpin', ...of, part: 'green' },
  relate: { edit: 'relate', ...of, relation: { kind: 'crosses on purpose', hole: 'h2' } },
  unrelate: { edit: 'unrelate', ...of, relation: { kind: 'crosses on purpose', hole: 'h2' } },
  'name hole': { edit: 'name hole', ...of, name: LONG },
  'note hole': { edit: 'note hole', ...of, note: LONG },
  'start routing': { edit: 'start routing', routing: 'b', name: LONG, loops: [], rounds: [] },
  'copy routing': { edit: 'copy routing', routing: 'a', as: 'b', name: LONG },
  'name routing': { edit: 'name routing', routing: 'a', name: LONG },
  'lock routing': { edit: 'lock routing', routing: 'a' },
  'unlock routing': { edit: 'unlock routing', routing: 'a' },
  'remove routing': { edit: 'remove routing', routing: 'a' },
  'add loop': { edit: 'add loop', routing: 'a', loop, after: 'first' },
  'change loop': { edit: 'change loop', routing: 'a', loop: 'front', to: { name: LONG } },
  'remove loop': { edit: 'remove loop', routing: 'a', loop: 'front' },
  'split loop': { edit: 'split loop', routing: 'a', loop: 'front', after: 'h1', as: loop },
  'join loops': { edit: 'join loops', routing: 'a', loop: 'front', with: 'gone' },
  'reverse loop': { edit: 'reverse loop', routing: 'a', loop: 'front' },
  'copy loop': { edit: 'copy loop', routing: 'a', loop: 'front', as: loop, holes: [], by: at },
  'add round': { edit: 'add round', routing: 'a', round: { ...loop, loops: [] }, after: 'first' },
  'change round': { edit: 'change round', routing: 'a', round: 'day', to: { name: LONG } },
  'remove round': { edit: 'remove round', routing: 'a', round: 'day' },
  'name site': { edit: 'name site', name: LONG },
  'note site': { edit: 'note site', note: LONG },
  'set units': { edit: 'set units', units: 'metres' },
  'set north': { edit: 'set north', north: 0.1 },
  'set grid': { edit: 'set grid', grid: { easting: 1, northing: 2 } },
  'draw boundary': { edit: 'draw boundary', boundary: { outlines: [ring], inner: [], tolerance: 0 } },
  'add base': { edit: 'add base', base: { id: 'hut', name: LONG, apron: at, footprints: [] } },
  'change base': { edit: 'change base', base: 'house', to: { name: LONG } },
  'remove base': { edit: 'remove base', base: 'house' },
  'add features': { edit: 'add features', features: [feature] },
  'change feature': { edit: 'change feature', feature: 'pond', to: { buffer: 12 } },
  'remove features': { edit: 'remove features', features: ['pond', 'gone'] },
  'add mark': { edit: 'add mark', mark: { id: 'm', kind: 'green site', at, verdict: 'natural' } },
  'change mark': { edit: 'change mark', mark: 'm', to: { verdict: 'needs work' } },
  'remove mark': { edit: 'remove mark', mark: 'm' },
  'move vertex': { edit: 'move vertex', outline, from: at, to: at },
  'add vertex': { edit: 'add vertex', outline, after: at, at },
  'remove vertex': { edit: 'remove vertex', outline, at },
  'move outline': { edit: 'move outline', outline, by: { x: 5, y: 0 } },
  'add image': { edit: 'add image', image: { ...image, placement: [1, 0, 0, 0, -1, 0] } },
  'change image': { edit: 'change image', image: 'aerial', to: { scaledBy: 'two points' } },
  'replace image': { edit: 'replace image', image: 'aerial', blob: image.blob, widthPixels: 5, heightPixels: 5 },
  'order image': { edit: 'order image', image: 'aerial', after: 'first' },
  'remove image': { edit: 'remove image', image: 'aerial' },
  'add tee set': { edit: 'add tee set', teeSet: { id: 'x', name: LONG, player: 'scratch man' }, after: 'first' },
  'change tee set': { edit: 'change tee set', teeSet: 'back', to: { name: LONG } },
  'order tee set': { edit: 'order tee set', teeSet: 'back', after: 'first' },
  'remove tee set': { edit: 'remove tee set', teeSet: 'back' },
  'add sketch': {
    edit: 'add sketch',
    sketch: { id: 's', shape: { kind: 'ring', radius: 30, about: { at } }, by: LONG, ink: 0, kept: false },
  },
  'change sketch': { edit: 'change sketch', sketch: 's', to: { kept: true } },
  'wipe sketches': { edit: 'wipe sketches', sketches: ['s'] },
  'change setting': { edit: 'change setting', setting: 'bend-angle', value: 'default' },
  decide: {
    edit: 'decide',
    disposition: { routing: 'a', finding: 'long-walk|h1|h2', kind: 'mitigated by', words: LONG, measured: 3 },
  },
  reopen: { edit: 'reopen', routing: 'a', finding: 'long-walk|h1|h2' },
  'lay out plan': { edit: 'lay out plan', plan: PLAN },
  several: { edit: 'several', does: LONG, edits: [] },
  'put back what was tried': { edit: 'put back what was tried', steps: 7 },
};

export const EVERY_EDIT: readonly NamedEdit[] = Object.values(BY_NAME);

/** The two holes with the longest names everywhere. */
export const LONG_ROUTING = {
  ...ROUTING,
  name: LONG,
  loops: ROUTING.loops.map((one) => ({ ...one, name: LONG })),
  rounds: ROUTING.rounds.map((one) => ({ ...one, name: LONG })),
};
export const LONG_PLAN: Plan = {
  ...PLAN,
  site: { ...PLAN.site, features: [feature], bases: PLAN.site.bases.map((base) => ({ ...base, name: LONG })) },
  teeSets: PLAN.teeSets.map((set) => ({ ...set, name: LONG })),
  routings: [LONG_ROUTING],
};
