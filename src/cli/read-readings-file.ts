import type { Problem, Result } from '../quantity/problem.ts';
import { readReadings } from '../record/read-readings.ts';
import type { RecordedReading } from '../record/readings.ts';
import { largestFile, readText } from './read-text.ts';
import type { World } from './world.ts';

export type ReadingsFile =
  | Result<readonly RecordedReading[]>
  /** The file is text, but holds no readings. */
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly heading: string };

/** What was read on arrival, out of a file. */
export const readReadingsFile = async (path: string, world: World): Promise<ReadingsFile> => {
  const text = await readText(path, world, { what: 'readings', most: largestFile });
  if (!text.ok) return text;
  const readings = readReadings(text.value);
  return readings.ok ? readings : { ...readings, heading: path };
};
