import type { Command } from './command.ts';

/** One calculation by name. */
export const sheetCommand: Command = {
  name: 'sheet',
  usage: '[NAME INPUT=VALUE ...]',
  options: [{ name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] }],
  operands: [0, 10_000],
  examples: [
    'twinfloor sheet water/pipe-loss flow="12 gal/min" bore="1 1/2 in" length="40 ft" roughness="0.0018 in" density="1 kg/L" viscosity="1 mPa s"',
    'twinfloor sheet',
    'twinfloor sheet water/pipe-loss --help',
  ],
  // loaded only when it is called: the other commands start faster without it
  help: async (call, world) => (await import('./run-sheet.ts')).helpSheet(call, world),
  run: async (call, world) => (await import('./run-sheet.ts')).runSheetCommand(call, world),
};
