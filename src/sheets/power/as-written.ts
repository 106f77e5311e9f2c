import { asPrinted } from '../../quantity/as-printed.ts';

/** Words of options that are printed as they are typed: sizes, letters, ratings. */
export const asWritten = (options: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(options.map((option) => [option, asPrinted(option)]));
