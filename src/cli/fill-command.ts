import type { Command } from './command.ts';

/** What trials say of each lane, what to set, what they foretell of the other floor; or how a lot is judged. */
export const fillCommand: Command = {
  name: 'fill',
  usage: 'BOOK.json [TRIALS.json|csv|xlsx]',
  options: [
    { name: 'lot', value: 'FILE' },
    { name: 'samples', value: 'FILE' },
    { name: 'stated', value: 'VOLUME' },
    { name: 'format', value: 'TAG' },
    { name: 'from', value: 'FLOOR' },
    { name: 'to', value: 'FLOOR' },
    { name: 'preset', value: 'COUNT' },
    { name: 'goal', value: 'GOAL', oneOf: ['level', 'volume'] },
    { name: 'confidence', value: 'SHARE' },
    { name: 'tolerance' },
    { name: 'measured', value: 'LIST' },
    { name: 'no-allowances' },
    {
      name: 'rule',
      value: 'RULE',
      oneOf: ['NIST Handbook 133', 'OIML R 87', 'EU average system', 'UK average system'],
    },
    { name: 'label', value: 'VOLUME' },
    { name: 'mav', value: 'VOLUME' },
    { name: 'edition', value: 'EDITION' },
    { name: 'tares', value: 'COUNT' },
    { name: 'table', value: 'TABLE', oneOf: ['Australia', 'New Zealand'] },
    { name: 'plan', value: 'PLAN' },
    { name: 'sheet', value: 'FILE' },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor fill src/book/demo/flagon-line.json examples/fill/trials.csv',
    'twinfloor fill src/book/demo/flagon-line.json examples/fill/trials.csv --samples examples/fill/samples.csv --json',
    'twinfloor fill src/book/demo/flagon-line.json --lot examples/fill/lot.csv --rule "EU average system" --label "2 L"',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-fill.ts')).runFill(call, world),
};
