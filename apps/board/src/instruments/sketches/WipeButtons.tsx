import { Button } from 'react-aria-components';
import type { Bench } from '../instrument.ts';
import { wipe } from './wiping.ts';

/** Wipes what is not kept: one's own, or everybody's. Each is one step that undo brings back. */
export function WipeButtons({ bench }: { readonly bench: Bench | undefined }) {
  if (!bench) return null;
  return (
    <>
      <Button className="button button--small" onPress={() => wipe(bench, 'mine')}>
        Wipe mine
      </Button>
      <Button className="button button--small" onPress={() => wipe(bench, 'everybody')}>
        Wipe all not kept
      </Button>
    </>
  );
}
