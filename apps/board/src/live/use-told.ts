import { useRef } from 'react';
import type { Frame } from './frame.ts';

/** The last frame that figures are shown of: in a crowd they follow the drawing by one picture. */
export function useTold(frame: Frame): Frame {
  const told = useRef(frame);
  if (!frame.figuresToCome) told.current = frame;
  return told.current;
}
