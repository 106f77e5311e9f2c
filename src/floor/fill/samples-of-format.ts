import type { Book } from '../../book/index.ts';
import type { BottleSample } from '../../fill/bottle-sample.ts';
import { type BottleSamples, bottleSamples } from '../../fill/bottle-samples.ts';
import type { Problem } from '../../quantity/problem.ts';
import { bookReader } from '../book-reader.ts';
import { ratePathOf } from '../rate-path.ts';
import { formatOf } from '../read-floor.ts';
import { agreedContents, deficiencyOf } from './agreed-contents.ts';
import { sampleKinds } from './sample-kinds.ts';
import { type AgainstBook, samplesAgainstBook } from './samples-against-book.ts';
import { typedNumber } from './typed-number.ts';
import type { MeasuredSample } from './weighed.ts';

/** What the measured bottles of a format say, and what of them could not be read. */
export interface FormatSamples {
  readonly bottles: number;
  readonly found: BottleSamples;
  /** Where the book says another, or nothing though it should. */
  readonly against: readonly AgainstBook[];
  readonly refused: readonly { readonly bottle: string; readonly problems: readonly Problem[] }[];
}

const inSi = (
  sample: MeasuredSample,
): { readonly made: BottleSample; readonly problems: readonly Problem[] } => {
  const made: Partial<Record<keyof BottleSample, number>> = {};
  const problems: Problem[] = [];
  for (const field of Object.keys(sampleKinds) as (keyof BottleSample)[]) {
    const text = sample[field];
    if (text === undefined) continue;
    const read = typedNumber(text, sampleKinds[field], field);
    if (read.ok) made[field] = read.value.value;
    else problems.push(...read.problems);
  }
  return { made, problems };
};

/** Of a normal spread one bottle in forty lies this many standard deviations under the mean. */
const oneInForty = 1.959963984540054;

/**
 * The customer's bottles of a format: how they differ, what a millimetre of level is worth, what the machine must take.
 *
 * Method   `bottleSamples`; the spread of volume that is wanted is the deficiency of the agreed rule over 1.96, since one
 *          bottle in forty may lie below the label less that
 * Symbols  statedBrimful  m3, that the bottles state where they are measuring containers
 * Returns  bottles that can't be read are named and left out whole
 */
export const samplesOfFormat = (
  book: Book,
  samples: readonly MeasuredSample[],
  formatTag?: string,
  statedBrimful?: number,
): FormatSamples => {
  const reader = bookReader(book);
  const { format, path } = formatOf(book, formatTag);
  const own = samples.filter((sample) => sample.format === format?.tag);
  const read = own.map((sample) => ({ sample, ...inSi(sample) }));
  const good = read.filter(({ problems }) => problems.length === 0).map(({ made }) => made);
  const label = reader.number(`${path}/label`, 'volume');
  const agreed = agreedContents(reader, ratePathOf(book, path));
  const deficiency = label === undefined ? undefined : deficiencyOf(agreed, label, undefined);
  const found = bottleSamples(good, {
    ...(deficiency === undefined ? {} : { wantedSpread: deficiency / oneInForty }),
    ...(statedBrimful === undefined ? {} : { statedBrimful }),
  });
  return {
    bottles: good.length,
    found,
    against: samplesAgainstBook(reader, path, found),
    refused: read.flatMap(({ sample, problems }) =>
      problems.length === 0 ? [] : [{ bottle: sample.bottle, problems }],
    ),
  };
};
