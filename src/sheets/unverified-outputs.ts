import type { SheetEntry } from './sheet-entry.ts';

/** A figure recalled from memory or from habit checks nothing. */
const external = new Set(['read', 'computed']);

/** Outputs of a sheet that no published or independently computed case holds: shown as unverified everywhere. */
export const unverifiedOutputs = ({ sheet, cases }: SheetEntry): string[] => {
  const held = new Set(
    cases.filter(({ source }) => external.has(source.mark)).flatMap(({ outputs }) => Object.keys(outputs)),
  );
  return Object.keys(sheet.outputs).filter((name) => !held.has(name));
};
