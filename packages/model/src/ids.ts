declare const kind: unique symbol;
type Id<Kind extends string> = string & { readonly [kind]?: Kind };

/** Ids are made once and never change; a hole keeps its id when its number changes or its routing is copied. */
export type HoleId = Id<'hole'>;
export type RoutingId = Id<'routing'>;
export type LoopId = Id<'loop'>;
export type RoundId = Id<'round'>;
export type TeeSetId = Id<'teeSet'>;
export type TurnPointId = Id<'turnPoint'>;
export type BaseId = Id<'base'>;
export type FeatureId = Id<'feature'>;
export type SiteMarkId = Id<'siteMark'>;
export type ImageLayerId = Id<'imageLayer'>;
export type SketchId = Id<'sketch'>;

/** A part of a hole that can be moved by itself. */
export type PartId = 'green' | `tee:${string}` | `turn:${string}`;

/** Ids are short, of these letters only, so that they can stand in keys and addresses. */
export const ID_PATTERN = /^[a-z0-9][a-z0-9-]{0,39}$/;

/** Whether an untrusted value can be an id. The one word of these letters that every object answers to is none. */
export function isId(value: unknown): value is string {
  return typeof value === 'string' && ID_PATTERN.test(value) && value !== 'constructor';
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz0123456789';

/**
 * A fresh id, e.g. `h4k2m9x1q`.
 *
 * @param prefix  one letter that tells a reader what it names
 * @param random  numbers in [0, 1), from outside: this package has no chance of its own
 */
export function makeId(prefix: string, random: () => number): string {
  let id = prefix;
  for (let i = 0; i < 10; i++) id += LETTERS[Math.floor(random() * LETTERS.length)] ?? 'a';
  return id;
}
