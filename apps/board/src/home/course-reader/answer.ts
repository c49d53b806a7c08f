import { type CourseFile, LARGEST_COURSE_FILE, readCourseFile, tooLargeSentence } from '@loopwright/formats';
import type { Answer, Question } from './contract.ts';

/** Answers questions about one file after another; keeps the file read last for 'take'. */
export function courseAnswers(): (question: Question) => Promise<Answer> {
  let last: Extract<CourseFile, { kind: 'courses' }> | undefined;
  return async (question) => {
    if (question.ask === 'take') return taken(last, question.index);
    last = undefined;
    const { file } = question;
    if (file.size > LARGEST_COURSE_FILE) return { kind: 'unreadable', why: tooLargeSentence(file.size) };
    const read = readCourseFile(await file.text());
    if (read.kind === 'unreadable') return read;
    if (read.kind === 'board') return { kind: 'taken', plan: read.plan, notes: read.notes };
    last = read;
    return read.courses.length === 1 ? taken(read, 0) : { kind: 'courses', courses: read.courses };
  };
}

function taken(file: Extract<CourseFile, { kind: 'courses' }> | undefined, index: number): Answer {
  if (!file?.courses[index])
    return { kind: 'unreadable', why: 'That course is not in the file any more: drop it again.' };
  const { plan, notes } = file.take(index);
  return { kind: 'taken', plan, notes };
}
