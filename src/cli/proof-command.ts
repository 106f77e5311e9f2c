import { gateNames } from '../proof/gate-names.ts';
import type { Command } from './command.ts';

/** What is to be proved on each floor, under which conditions, what was, what carries over, and what the gates lack. */
export const proofCommand: Command = {
  name: 'proof',
  usage: 'BOOK.json [RECORDS]',
  options: [
    { name: 'format', value: 'TAG' },
    { name: 'floor', value: 'TAG' },
    { name: 'gate', value: 'NAME', oneOf: gateNames },
    { name: 'from', value: 'DAY' },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor proof src/book/demo/flagon-line.json --floor OXBOW',
    'twinfloor proof src/book/demo/flagon-line.json examples/records/protocol.records --gate accepted',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-proof.ts')).runProof(call, world),
};
