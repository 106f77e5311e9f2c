import { settingMoments } from '../record/setting-moments.ts';
import type { Command } from './command.ts';

/** Everything that can be turned, typed or moved, as it was read; what changed between two moments and what that moves. */
export const settingsCommand: Command = {
  name: 'settings',
  usage: 'BOOK.json [RECORDS]',
  options: [
    { name: 'from', value: 'MOMENT', oneOf: settingMoments },
    { name: 'to', value: 'MOMENT', oneOf: settingMoments },
    { name: 'floor', value: 'TAG' },
    { name: 'format', value: 'TAG' },
    { name: 'sheet', value: 'FILE' },
    { name: 'out', value: 'FILE' },
  ],
  operands: [1, 2],
  examples: [
    'twinfloor settings src/book/demo/flagon-line.json --out settings.xlsx',
    'twinfloor settings src/book/demo/flagon-line.json examples/records/settings.records --from run-off --to "as left"',
  ],
  // loaded only when it is called: the other commands start faster without it
  run: async (call, world) => (await import('./run-settings.ts')).runSettings(call, world),
};
