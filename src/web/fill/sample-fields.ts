import type { BottleSample } from '../../fill/bottle-sample.ts';
import { sampleKinds } from '../../floor/fill/sample-kinds.ts';
import { parseQuantity } from '../../quantity/index.ts';
import type { RecordedSample } from '../../record/samples.ts';

/** What is measured on one of the customer's bottles, in the order of the hand: scales first, then the rule. */
export const sampleFields = [
  'mass',
  'levelMass',
  'brimfulMass',
  'temperature',
  'height',
  'bore',
  'finish',
  'body',
  'lean',
  'closureMass',
  'closureHeight',
] as const satisfies readonly (keyof BottleSample)[];
export type SampleField = (typeof sampleFields)[number];

/** A recorded bottle in SI; what does not read is left out. */
export const sampleInSi = (sample: RecordedSample): BottleSample =>
  Object.fromEntries(
    sampleFields.flatMap((field) => {
      const text = sample[field];
      if (text === undefined) return [];
      const read = parseQuantity(text, sampleKinds[field], { path: field });
      return read.ok ? [[field, read.value.value as number]] : [];
    }),
  );
