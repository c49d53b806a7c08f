import type { Plan } from '@loopwright/model';

/** What crosses between page and worker: plain data, each answer with its question's number. */
export interface ReadNote {
  readonly what: string;
  readonly about?: string;
}

export interface TakenPlan {
  readonly kind: 'taken';
  readonly plan: Plan;
  readonly notes: readonly ReadNote[];
}

/** Several courses in one file: the person chooses. */
export interface CourseChoices {
  readonly kind: 'courses';
  readonly courses: readonly { readonly name: string; readonly holes: number }[];
}

/** One sentence with what to do. */
export interface Unreadable {
  readonly kind: 'unreadable';
  readonly why: string;
}

export type Answer = TakenPlan | CourseChoices | Unreadable;

export type Question =
  | { readonly ask: 'read'; readonly file: Blob }
  /** A course of the file read last. */
  | { readonly ask: 'take'; readonly index: number };

export interface Numbered<Content> {
  readonly number: number;
  readonly content: Content;
}
