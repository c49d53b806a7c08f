import { useEffect, useState } from 'react';
import { SANS, SERIF } from './inks.ts';

/** Whether the drawing's letters are there. A canvas does not draw itself anew when a font arrives: its owner does. */
export function useFontsReady(): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => {
    let here = true;
    const wanted = [`italic 14px ${SERIF}`, `600 12px ${SANS}`];
    // Where a font does not come, the drawing stays with the next in the list.
    void Promise.allSettled(wanted.map((font) => document.fonts.load(font))).then(() => {
      if (here) setReady(true);
    });
    return () => {
      here = false;
    };
  }, []);
  return ready;
}
