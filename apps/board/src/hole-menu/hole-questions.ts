import type { NamedEdit } from '@loopwright/document';
import { type HoleId, holeOf, type RelationKind, type Routing } from '@loopwright/model';
import type { Names } from '../reading/names.ts';
import { holeWords } from '../reading/names.ts';
import { editFor } from '../round/bead-moves.ts';
import { holesInOrder } from '../tools/chosen-holes.ts';
import type { HoleChoice, HoleQuestion, MenuEntry } from './menu-entry.ts';

/** What the questions of one hole are made from. */
export interface QuestionSource {
  readonly routing: Routing;
  readonly names: Names;
  readonly hole: HoleId;
}

/** Every other hole on the plan, in playing order, spare ones last. */
export function otherHoles({ routing, names, hole }: QuestionSource): readonly HoleChoice[] {
  return holesInOrder(routing)
    .filter((id) => id !== hole)
    .map((id) => ({ hole: id, words: sentence(holeWords(routing, names, id)) }));
}

const otherInTheRound = (source: QuestionSource) =>
  otherHoles(source).filter(({ hole }) => holeOf(source.routing, hole)?.seat.in === 'loop');

export function askToSwap(source: QuestionSource): HoleQuestion {
  const { routing, hole } = source;
  return {
    hole,
    words: `Which hole shall ${nameOf(source)} swap places with in the round?`,
    choices: otherInTheRound(source),
    editFor: (other) => ({ edit: 'swap places', routing: routing.id, hole, with: other }),
  };
}

export function askToExchange(source: QuestionSource): HoleQuestion {
  const { routing, hole } = source;
  return {
    hole,
    words: `Which hole shall ${nameOf(source)} exchange corridors with? Each then plays where the other did.`,
    choices: otherHoles(source),
    editFor: (other) => ({ edit: 'exchange corridors', routing: routing.id, hole, with: other }),
  };
}

/** Puts a hole in the round after another; a spare one comes back there. */
export function askToInsert(source: QuestionSource): HoleQuestion {
  const { routing, hole } = source;
  return {
    hole,
    words: `After which hole shall ${nameOf(source)} be played?`,
    choices: otherInTheRound(source),
    editFor: (after) => {
      const seat = holeOf(routing, after)?.seat;
      return seat?.in === 'loop' ? editFor(routing, hole, { in: 'loop', loop: seat.loop, after }) : undefined;
    },
  };
}

const RELATIONS: Readonly<Record<RelationKind, string>> = {
  'shares its green with': 'share its green with',
  'crosses on purpose': 'cross on purpose',
  'shares fairway with': 'share fairway with',
};

export function askToRelate(source: QuestionSource, kind: RelationKind): HoleQuestion {
  const { routing, hole } = source;
  return {
    hole,
    words: `Which hole does ${nameOf(source)} ${RELATIONS[kind]}?`,
    choices: otherHoles(source),
    editFor: (other): NamedEdit => ({ edit: 'relate', routing: routing.id, hole, relation: { kind, hole: other } }),
  };
}

/** The entry that asks: by pointing at the other hole, or from the list. */
export function entryAsking(title: string, question: HoleQuestion): MenuEntry {
  if (question.choices.length === 0) return { title, why: 'There is no other hole.' };
  const listed = question.choices.flatMap(({ hole, words }): MenuEntry[] => {
    const edit = question.editFor(hole);
    return edit ? [{ title: words, act: { do: 'edit', edit } }] : [];
  });
  return { title, inside: [{ title: 'Point at it …', act: { do: 'ask', question } }, ...listed] };
}

const nameOf = ({ routing, names, hole }: QuestionSource) => holeWords(routing, names, hole);

const sentence = (words: string) => words.slice(0, 1).toLocaleUpperCase('en') + words.slice(1);
