import type { Option } from './command.ts';

/** Taken by the commands that assess the floors of a book: which of them, on what was found, in which units. */
export const assessOptions: readonly Option[] = [
  { name: 'format', value: 'TAG' },
  { name: 'floor', value: 'TAG' },
  { name: 'remedies' },
  { name: 'readings', value: 'FILE.json' },
  { name: 'temporary' },
  { name: 'units', value: 'SYSTEM', oneOf: ['metric', 'us'] },
];
