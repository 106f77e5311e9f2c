import type { Kind } from '../quantity/kinds.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { readEntry } from '../quantity/read-entry.ts';
import { proofProblem } from './problems.ts';

/** A reading as it counts: its value with the ends of its spread. */
export interface TypedReading {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What no instrument reads below zero: there a minus is a slip, and would pass every limit that is a most. */
const neverNegative: ReadonlySet<Kind> = new Set<Kind>([
  'ratio',
  'count',
  'length',
  'area',
  'volume',
  'mass',
  'time',
  'velocity',
  'frequency',
  'rotationalSpeed',
  'temperature',
  'absolutePressure',
  'volumeFlow',
  'massFlow',
  'density',
  'rate',
  'startRate',
  'force',
  'torque',
  'energy',
  'power',
  'voltage',
  'current',
  'resistance',
  'conductivity',
  'massFraction',
  'relativeHumidity',
  'massConcentration',
  'soluteConcentration',
  'numberConcentration',
]);

/** A reading out of the text that was typed. */
export const typedReading = (text: string, kind: Kind, path: string): Result<TypedReading> => {
  const read = readEntry(text, kind, { path });
  if (!read.ok) return read;
  const { value, low, high } = read.value;
  if (value < 0 && neverNegative.has(kind)) {
    return refuse(proofProblem('PROOF_READING_NEGATIVE', path, { given: text }));
  }
  return accept({ value, low, high });
};
