import type { CoordinateReading } from '@loopwright/formats';
import { useEffect, useRef, useState } from 'react';
import type { GoTo } from '../board/parts.ts';
import type { BoardSession } from '../live/board-session.ts';
import { useSteady } from '../reading/use-steady.ts';
import { FeaturesSheet } from './FeaturesSheet.tsx';
import { addAll, type FeaturesStep, featuresWords, stepAfter } from './features-step.ts';
import { openFeaturesReader, readFeaturesWith } from './reader/client.ts';

export interface FeaturesFileProps {
  readonly file: File;
  readonly session: BoardSession;
  readonly goTo: GoTo;
  readonly onClose: () => void;
}

/** Brings one file of features onto the board: read apart from the page, shown, and added as one step. */
export function FeaturesFile({ file, session, goTo, onClose }: FeaturesFileProps) {
  const [step, setStep] = useState<FeaturesStep>({ at: 'reading', file: file.name });
  const called = useRef<AbortController>(undefined);
  const read = useSteady(async (coordinates?: CoordinateReading) => {
    called.current?.abort();
    const control = new AbortController();
    called.current = control;
    setStep({ at: 'reading', file: file.name });
    const { site } = session.writtenPlan.get();
    const question = { file, site, ...(coordinates ? { coordinates } : {}) };
    const answer = await readFeaturesWith(openFeaturesReader, question, control.signal);
    if (answer) setStep(stepAfter(file.name, answer));
  });
  useEffect(() => {
    void read();
    return () => called.current?.abort();
  }, [read]);
  const add = () => {
    if (step.at !== 'ready') return;
    const count = featuresWords(step.read.features.length);
    if (session.edit(addAll(step.read)) === 'done') {
      session.say(`${count} added; undo takes all of them back.`);
      goTo({ kind: 'all' });
    } else {
      session.say(
        'The board took none of them: together with what is there they are more than it holds. Nothing was changed.',
      );
    }
    onClose();
  };
  return <FeaturesSheet step={step} onSaid={(coordinates) => void read(coordinates)} onAdd={add} onClose={onClose} />;
}
