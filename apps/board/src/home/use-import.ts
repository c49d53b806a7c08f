import { useEffect, useRef, useState } from 'react';
import type { HomeProps } from '../board/parts.ts';
import { useSteady } from '../reading/use-steady.ts';
import { type CourseReader, openCourseReader } from './course-reader/client.ts';
import { type ImportStep, oneFile, renamed, stepAfterReading } from './import-step.ts';

export interface Import {
  readonly step: ImportStep;
  readonly dropFiles: (files: readonly File[]) => void;
  readonly choose: (index: number) => void;
  readonly rename: (name: string) => void;
  readonly create: () => void;
  readonly putAway: () => void;
}

const NO_ANSWER = 'The server did not answer: the course is still here. Check the connection and try again.';

/** A file on its way to a board. The file is read in a worker; nothing leaves the page before `create`. */
export function useImport({ createBoard, openLink }: HomeProps): Import {
  const [step, setStep] = useState<ImportStep>({ at: 'waiting' });
  const reader = useRef<CourseReader | undefined>(undefined);
  useEffect(
    () => () => {
      reader.current?.close();
      reader.current = undefined;
    },
    [],
  );
  const opened = () => {
    reader.current ??= openCourseReader();
    return reader.current;
  };

  const dropFiles = useSteady(async (files: readonly File[]) => {
    const one = oneFile(files);
    if ('problem' in one) return setStep({ at: 'waiting', problem: one.problem });
    setStep({ at: 'reading', file: one.file.name });
    setStep(stepAfterReading(one.file.name, await opened().ask({ ask: 'read', file: one.file })));
  });
  const choose = useSteady(async (index: number) => {
    if (step.at !== 'choosing') return;
    setStep({ at: 'reading', file: step.file });
    setStep(stepAfterReading(step.file, await opened().ask({ ask: 'take', index })));
  });
  const rename = useSteady((name: string) => {
    if (step.at === 'ready') setStep({ ...step, name });
  });
  const create = useSteady(async () => {
    if (step.at !== 'ready') return;
    const { problem: _, ...ready } = step;
    setStep({ ...ready, at: 'creating' });
    const plan = renamed(ready.plan, ready.name);
    const answer = await createBoard({ name: plan.site.name, plan }).catch(
      () => ({ kind: 'refused', why: NO_ANSWER }) as const,
    );
    if (answer.kind === 'created') openLink(answer.link);
    else setStep({ ...ready, at: 'ready', problem: answer.why });
  });
  const putAway = useSteady(() => setStep({ at: 'waiting' }));
  return { step, dropFiles, choose, rename, create, putAway };
}
