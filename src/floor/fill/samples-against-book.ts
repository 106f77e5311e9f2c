import type { BottleSamples, SampledName } from '../../fill/bottle-samples.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { BookReader } from '../book-reader.ts';

/** A measure of which the book says another than the bottles, or nothing though it hangs on it. */
export interface AgainstBook {
  readonly code: 'unlike' | 'boreNotWritten' | 'boreOverNeck';
  readonly of: SampledName;
  /** What the book says, SI: of a bore that is not written the outside diameter of the neck. */
  readonly said: number;
  /** From where to where nearly all bottles lie. */
  readonly low: number;
  readonly high: number;
  /** Mean of those that were measured. */
  readonly mean: number;
}

/** Where the book says what is measured on a bottle. */
const fields: readonly (readonly [of: SampledName, field: string, kind: Kind])[] = [
  ['brimful', 'brimful', 'volume'],
  ['level', 'level', 'volume'],
  ['height', 'height', 'length'],
  ['bore', 'neckBore', 'length'],
  ['body', 'body', 'length'],
  ['mass', 'mass', 'mass'],
  ['closureMass', 'closureMass', 'mass'],
  ['closureHeight', 'closureHeight', 'length'],
];

/**
 * The measured bottles against what the book says of their format.
 *
 * Method   a value of the book outside of where nearly all bottles lie is unlike them. The bore of a neck is neither its
 *          outside diameter nor the size of its cap: where the book has the latter alone it is asked for
 */
export const samplesAgainstBook = (
  reader: BookReader,
  formatPath: string,
  { quantities }: BottleSamples,
): readonly AgainstBook[] => {
  const unlike = fields.flatMap(([of, field, kind]): readonly AgainstBook[] => {
    const said = reader.number(`${formatPath}/${field}`, kind);
    const measured = quantities[of];
    if (said === undefined || measured === undefined) return [];
    const { low, high, mean } = measured;
    return said < low || said > high ? [{ code: 'unlike', of, said, low, high, mean }] : [];
  });
  const { bore } = quantities;
  const neck = reader.number(`${formatPath}/neck`, 'length');
  if (bore === undefined || neck === undefined) return unlike;
  const { low, high, mean } = bore;
  const asked = { of: 'bore', said: neck, low, high, mean } as const;
  const written = reader.number(`${formatPath}/neckBore`, 'length') !== undefined;
  if (mean >= neck) return [...unlike, { code: 'boreOverNeck', ...asked }];
  return written ? unlike : [...unlike, { code: 'boreNotWritten', ...asked }];
};
