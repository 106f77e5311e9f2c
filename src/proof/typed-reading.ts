import type { Kind } from '../quantity/kinds.ts';
import { accept, type Result } from '../quantity/problem.ts';
import { readEntry } from '../quantity/read-entry.ts';

/** A reading as it counts: its value with the ends of its spread. */
export interface TypedReading {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A reading out of the text that was typed. */
export const typedReading = (text: string, kind: Kind, path: string): Result<TypedReading> => {
  const read = readEntry(text, kind, { path });
  if (!read.ok) return read;
  const { value, low, high } = read.value;
  return accept({ value, low, high });
};
