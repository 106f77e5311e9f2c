import type { Option } from './command.ts';

/** Taken by every command that can assess a floor otherwise than as it was promised. */
export const laidOptions: readonly Option[] = [
  { name: 'readings', value: 'FILE.json' },
  { name: 'temporary' },
];
