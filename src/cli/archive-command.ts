import type { Command } from './command.ts';

/** A whole book as one file, out of a data folder or into it. */
export const archiveCommand: Command = {
  name: 'archive',
  usage: '(BOOK --out FILE | --in FILE [BOOK]) [--data FOLDER]',
  options: [
    { name: 'out', value: 'FILE' },
    { name: 'in', value: 'FILE' },
    { name: 'data', value: 'FOLDER' },
  ],
  operands: [0, 1],
  examples: [
    'twinfloor archive flagon-line --out flagon-line.twinfloor.zip',
    'twinfloor archive --in flagon-line.twinfloor.zip --json',
  ],
  // loaded only when it is called: it brings the database
  run: async (call, world) => (await import('./run-archive.ts')).runArchive(call, world),
};
