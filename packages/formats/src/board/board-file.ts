import { canonicalJson, type Plan } from '@loopwright/model';

/**
 * A board as a file: its whole plan as JSON, version 1.
 *
 * Written in the one canonical form, so that equal plans make equal files; reading it gives an equal plan.
 *
 * Source of the form: RFC 8785.
 */
export function writeBoardFile(plan: Plan): string {
  return `${canonicalJson(plan)}\n`;
}
