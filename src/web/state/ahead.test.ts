import { expect, it } from 'vitest';
import { makeAhead } from './ahead.ts';

it('an answer that was asked for ahead is taken once, and not once it is old', async () => {
  const due: (() => void)[] = [];
  const ahead = makeAhead((run) => due.push(run));
  ahead.ask('standing', async () => 1);
  expect(await ahead.take('standing')).toBe(1);
  expect(ahead.take('standing')).toBeUndefined();
  ahead.ask('standing', async () => 2);
  ahead.ask('standing', async () => 3);
  // the first two have grown old, the last has not
  due[0]?.();
  due[1]?.();
  expect(await ahead.take('standing')).toBe(3);
  ahead.ask('standing', async () => 4);
  due.at(-1)?.();
  expect(ahead.take('standing')).toBeUndefined();
});
