import type { Command } from './command.ts';

/** Whether exported records are whole, as they were written, and signed by whom they say. */
export const verifyCommand: Command = {
  name: 'verify',
  usage: 'RECORDS',
  options: [
    { name: 'heads', value: 'FILE' },
    { name: 'key', value: 'KEYS' },
  ],
  operands: [1, 1],
  examples: [
    'twinfloor verify examples/records/oxbow.records',
    'twinfloor verify examples/records/oxbow.records --heads examples/records/oxbow-shipped.records --json',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-verify.ts')).runVerify(call, world),
};
