import type { Command } from './command.ts';

/** What a whole shift does on each floor, what one change is worth, what it does to the washing, the proof run. */
export const shiftCommand: Command = {
  name: 'shift',
  usage: 'BOOK.json [RECORDS]',
  options: [
    { name: 'format', value: 'TAG' },
    { name: 'floor', value: 'TAG' },
    { name: 'shifts', value: 'COUNT' },
    { name: 'seed', value: 'NUMBER' },
    { name: 'change', value: 'PLACE=VALUE', many: true },
    { name: 'brief' },
    { name: 'proof' },
    { name: 'ran', value: 'TIME' },
    { name: 'made', value: 'COUNT' },
    { name: 'stops', value: 'COUNT' },
    { name: 'stood', value: 'TIME' },
    { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor shift src/book/demo/flagon-line.json',
    'twinfloor shift src/book/demo/flagon-line.json examples/records/fill.records --brief',
    'twinfloor shift src/book/demo/flagon-line.json --floor LARKMOOR --change "+WASH/dwell=9.2 s" --brief',
    'twinfloor shift src/book/demo/flagon-line.json --floor LARKMOOR --proof --ran "60 min" --made 960 --stops 2 --stood "3 min"',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-shift.ts')).runShift(call, world),
};
