import { expect, test } from 'vitest';
import type { PresenceState } from '../contract.ts';
import { handClock } from '../fixtures/hand-clock.ts';
import { openSpeaker } from './speaker.ts';

const at = (x: number): PresenceState => ({ selection: [], pointer: { x, y: 0 } });
const dragging = (x: number): PresenceState => ({
  selection: [],
  drag: { edit: 'move part', routing: 'a', hole: 'h1', part: 'green', to: { x, y: 0 } },
});

const opened = () => {
  const clock = handClock();
  const said: PresenceState[] = [];
  let held = false;
  const speaker = openSpeaker(
    clock,
    (state) => said.push(state),
    () => held,
  );
  return {
    clock,
    said,
    speaker,
    hold: (now: boolean) => {
      held = now;
      speaker.release();
    },
  };
};

test('P5: a hundred words in a second are some 25, and the last is among them', () => {
  const { clock, said, speaker } = opened();
  for (let i = 0; i < 100; i++) {
    speaker.say(at(i));
    clock.move(10);
  }
  clock.move(100);
  expect(said.length).toBeGreaterThanOrEqual(24);
  expect(said.length).toBeLessThanOrEqual(27);
  expect(said.at(-1)).toEqual(at(99));
});

test('P6: what follows a change on its way to the store waits for it, and the newest word wins', () => {
  const { clock, said, speaker, hold } = opened();
  speaker.say(dragging(1));
  hold(true);
  speaker.say(at(2));
  clock.move(200);
  speaker.say(at(3));
  expect(said).toEqual([dragging(1)]);
  hold(false);
  expect(said).toEqual([dragging(1), at(3)]);
});

test('P7: a drag held still is said again every second, also while newer words wait', () => {
  const { clock, said, speaker, hold } = opened();
  speaker.say(dragging(1));
  hold(true);
  speaker.say(at(2));
  clock.move(3500);
  expect(said).toEqual([dragging(1), dragging(1), dragging(1), dragging(1)]);
  hold(false);
  clock.move(5000);
  expect(said.at(-1)).toEqual(at(2));
  expect(said.length).toBe(5);
});

test('the same word is not said twice, and nothing after closing', () => {
  const { clock, said, speaker } = opened();
  const word = at(1);
  speaker.say(word);
  clock.move(100);
  speaker.say(word);
  speaker.close();
  clock.move(5000);
  expect(said).toEqual([word]);
});
