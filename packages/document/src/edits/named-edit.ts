import type { Disposition, FindingKey, Plan, RoutingId, SettingKey } from '@loopwright/model';
import type { HoleEdit } from './hole-edit.ts';
import type { RoutingEdit } from './routing-edit.ts';
import type { SiteEdit } from './site-edit.ts';

/**
 * Everything people do to a plan, by name. Plain JSON: the same value is kept as one undo step,
 * and sent by presence while a drag is in progress.
 */
export type NamedEdit =
  | HoleEdit
  | RoutingEdit
  | SiteEdit
  | { readonly edit: 'change setting'; readonly setting: SettingKey; readonly value: number | 'default' }
  | { readonly edit: 'decide'; readonly disposition: Disposition }
  | { readonly edit: 'reopen'; readonly routing: RoutingId; readonly finding: FindingKey }
  /** Fills an empty document, e.g. from an imported course. Never applied over holes. */
  | { readonly edit: 'lay out plan'; readonly plan: Plan }
  /** Several edits as one step, each done on what the one before left; `does` names the step ('take out 3 holes'). */
  | { readonly edit: 'several'; readonly does: string; readonly edits: readonly NamedEdit[] }
  /** The name of the step that `putBack` makes; by itself it changes nothing. */
  | { readonly edit: 'put back what was tried'; readonly steps: number };

/** `gone`: what it speaks of was removed by someone meanwhile. `nothing`: it would change nothing, so nothing is written. */
export type EditResult = 'done' | 'gone' | 'nothing';
