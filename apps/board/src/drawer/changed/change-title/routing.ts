import type { RoutingEdit } from '@loopwright/document';
import type { LoopId, RoundId, RoutingId } from '@loopwright/model';
import { holeCalled } from '../../../reading/names.ts';
import { quoted, shortName } from '../../../reading/short-name.ts';
import type { TitleSource } from './title-source.ts';

/** What was done to a routing, a loop or a round, in one line. */
export function routingTitle(edit: RoutingEdit, source: TitleSource): string {
  const routing = (id: RoutingId) => routingWords(id, source);
  switch (edit.edit) {
    case 'start routing':
      return `routing ${quoted(edit.name)} started`;
    case 'copy routing':
      return `${routing(edit.routing)} copied as ${quoted(edit.name)}`;
    case 'name routing':
      return `${routing(edit.routing)} named ${quoted(edit.name)}`;
    case 'lock routing':
      return `${routing(edit.routing)} locked`;
    case 'unlock routing':
      return `${routing(edit.routing)} unlocked`;
    case 'remove routing':
      return `${routing(edit.routing)} removed`;
    case 'add round':
      return `round ${quoted(edit.round.name)} added`;
    case 'change round':
      return `${roundWords(edit.round, source)} changed`;
    case 'remove round':
      return `${roundWords(edit.round, source)} removed`;
    default:
      return loopTitle(edit, source);
  }
}

type LoopEdit = Extract<RoutingEdit, { readonly edit: `${string} ${'loop' | 'loops'}` }>;

function loopTitle(edit: LoopEdit, source: TitleSource): string {
  const loop = (id: LoopId) => loopWords(id, source);
  switch (edit.edit) {
    case 'add loop':
      return `loop ${shortName(edit.loop.name)} added`;
    case 'change loop':
      return edit.to.name === undefined
        ? `base of ${loop(edit.loop)} changed`
        : `${loop(edit.loop)} named ${quoted(edit.to.name)}`;
    case 'remove loop':
      return `${loop(edit.loop)} removed; its holes are spare`;
    case 'split loop':
      return `${loop(edit.loop)} split after ${holeCalled(source.before.number(edit.after))}`;
    case 'join loops':
      return `${loop(edit.loop)} goes on with ${loop(edit.with)}`;
    case 'reverse loop':
      return `${loop(edit.loop)} now plays the other way round`;
    case 'copy loop':
      return `${loop(edit.loop)} copied as ${quoted(edit.as.name)}`;
  }
}

function routingWords(id: RoutingId, { change, at }: TitleSource): string {
  const named = [...change.beforePlan.routings, ...at.plan.routings].find((routing) => routing.id === id);
  return named ? `routing ${quoted(named.name)}` : 'a routing';
}

function roundWords(id: RoundId, { change, at }: TitleSource): string {
  const all = [...change.beforePlan.routings, at.routing].flatMap(({ rounds }) => rounds);
  const named = all.find((round) => round.id === id);
  return named ? `round ${quoted(named.name)}` : 'a round';
}

/** 'Loop B', by the name it had; a loop that is called a loop by its name is not called it twice. */
function loopWords(id: LoopId, { change, at }: TitleSource): string {
  const all = [...change.beforePlan.routings, at.routing].flatMap(({ loops }) => loops);
  const name = all.find((loop) => loop.id === id)?.name;
  if (name === undefined) return 'a loop';
  return /\bloop\b/i.test(name) ? shortName(name) : `loop ${shortName(name)}`;
}
