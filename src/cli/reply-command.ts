import type { Command } from './command.ts';

/** What a witness answered to a witness file, whether it is signed over that, and what came after it. */
export const replyCommand: Command = {
  name: 'reply',
  usage: 'REPLY [RECORDS]',
  options: [
    { name: 'file', value: 'WITNESS.html' },
    { name: 'out', value: 'FILE.records' },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor reply examples/records/protocol.reply examples/records/protocol.records --out answered.records',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-reply.ts')).runReply(call, world),
};
