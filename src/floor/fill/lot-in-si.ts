import type { Book } from '../../book/index.ts';
import type { WeighedLot as LotInSi, ProductDensity } from '../../fill/weighed-lot.ts';
import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import type { ContentsRule } from '../../sheets/contents/reference-temperature.ts';
import { type BookReader, bookReader } from '../book-reader.ts';
import { ratePathOf } from '../rate-path.ts';
import { formatOf, readFloor } from '../read-floor.ts';
import { type AgreedContents, agreedContents, referenceOf } from './agreed-contents.ts';
import { fillProblem } from './problems.ts';
import { densityAt } from './product-density.ts';
import { typedNumber } from './typed-number.ts';
import { typedPlan } from './typed-plan.ts';
import type { WeighedLot } from './weighed.ts';

/** In the place of what the agreement, or the lot itself, says. */
export interface LotAsk {
  readonly rule?: ContentsRule;
  readonly edition?: string;
  /** Maximum allowable variation, m3. */
  readonly variation?: number;
  /** m3, in the place of what the book says that the label states. */
  readonly label?: number;
  readonly tareSample?: LotInSi['tareSample'];
  readonly table?: LotInSi['table'];
  readonly typedPlan?: LotInSi['typedPlan'];
}

/** A lot that no rule can judge: the agreement speaks of the level only, or of a rule that is not held. */
export interface LotRead {
  readonly lot?: LotInSi;
  readonly agreed: AgreedContents;
}

const massesOf = (
  texts: readonly (string | undefined)[],
  place: (i: number) => string,
  problems: Problem[],
): readonly (number | undefined)[] =>
  texts.map((text, i) => {
    if (text === undefined) return undefined;
    const read = typedNumber(text, 'mass', place(i));
    if (read.ok) return read.value.value;
    problems.push(...read.problems);
    return undefined;
  });

/** Density as it was measured with the lot, else that of the book at the temperature at which the rule judges. */
const densityOf = (
  reader: BookReader,
  lot: WeighedLot,
  floor: number,
  reference: number | undefined,
  problems: Problem[],
): ProductDensity | undefined => {
  const inputs = readFloor(reader, floor, lot.format);
  const product = lot.product ?? inputs.floor.liquid?.product;
  if (lot.density !== undefined) {
    const value = typedNumber(lot.density, 'density', 'density');
    const warm =
      lot.temperature === undefined ? undefined : typedNumber(lot.temperature, 'temperature', 'temperature');
    if (!value.ok) problems.push(...value.problems);
    if (warm?.ok === false) problems.push(...warm.problems);
    if (!value.ok) return undefined;
    const temperature = warm?.ok ? warm.value.value : undefined;
    const warmer =
      temperature === undefined ? undefined : densityAt(reader, inputs, temperature + 1, product);
    const there = temperature === undefined ? undefined : densityAt(reader, inputs, temperature, product);
    const expansion = warmer === undefined || there === undefined ? undefined : (there - warmer) / there;
    return {
      value: value.value.value,
      ...(temperature === undefined ? {} : { temperature }),
      ...(expansion === undefined || !(expansion >= 0) ? {} : { expansion }),
    };
  }
  const products = reader.book.line?.products ?? [];
  if (products.find(({ tag }) => tag === product)?.properties === 'water') return 'water';
  const value = reference === undefined ? undefined : densityAt(reader, inputs, reference, product);
  return value === undefined || reference === undefined ? undefined : { value, temperature: reference };
};

/** What the rule wants typed in: as it is asked, else as it was written down with the lot. */
const typedIn = (
  lot: WeighedLot,
  ask: LotAsk,
  problems: Problem[],
): Pick<LotInSi, 'variation' | 'tareSample' | 'table' | 'typedPlan'> => {
  const written = lot.variation === undefined ? undefined : typedNumber(lot.variation, 'volume', 'variation');
  if (written?.ok === false) problems.push(...written.problems);
  const variation = ask.variation ?? (written?.ok ? written.value.value : undefined);
  const tareSample = ask.tareSample ?? lot.tareSample;
  const table = ask.table ?? lot.table;
  const plan = ask.typedPlan ?? (lot.plan === undefined ? undefined : typedPlan(lot.plan));
  return {
    ...(variation === undefined ? {} : { variation }),
    ...(tareSample === undefined ? {} : { tareSample }),
    ...(table === undefined ? {} : { table }),
    ...(plan === undefined ? {} : { typedPlan: plan }),
  };
};

/**
 * A lot as plain numbers for its rule: label and rule from the book, masses as they were typed.
 *
 * Returns  without a lot where no rule was agreed or asked
 * Problems FILL_FLOOR_UNKNOWN, FILL_FORMAT_UNKNOWN, those of readEntry at each value, all at once
 */
export const lotInSi = (book: Book, lot: WeighedLot, ask: LotAsk = {}): Result<LotRead> => {
  const reader = bookReader(book);
  const floors = book.floors ?? [];
  const floor = floors.findIndex(({ tag }) => tag === lot.floor);
  const { format, path: formatPath } = formatOf(book, lot.format);
  const problems: Problem[] = [];
  if (floor < 0) {
    const allowed = floors.map(({ tag }) => tag);
    problems.push(fillProblem('FILL_FLOOR_UNKNOWN', 'floor', { given: lot.floor, allowed }));
  }
  if (format === undefined) {
    const allowed = (book.line?.formats ?? []).map(({ tag }) => tag);
    problems.push(fillProblem('FILL_FORMAT_UNKNOWN', 'format', { given: lot.format, allowed }));
  }
  if (problems.length > 0) return refuse(...problems);
  const agreed = agreedContents(reader, ratePathOf(book, formatPath), ask.rule);
  const { rule } = agreed;
  const gross = massesOf(
    lot.packages.map((one) => one.gross),
    (i) => `packages/${i}/gross`,
    problems,
  );
  const tare = massesOf(
    lot.packages.map((one) => one.tare),
    (i) => `packages/${i}/tare`,
    problems,
  );
  const tares = massesOf(lot.tares ?? [], (i) => `tares/${i}`, problems);
  const label = ask.label ?? reader.number(`${formatPath}/label`, 'volume');
  const reference = referenceOf(agreed);
  const density = densityOf(reader, lot, floor, reference, problems);
  const division =
    lot.resolution === undefined ? undefined : typedNumber(lot.resolution, 'mass', 'resolution');
  if (division?.ok === false) problems.push(...division.problems);
  const typed = typedIn(lot, ask, problems);
  if (problems.length > 0) return refuse(...problems);
  if (rule === undefined) return accept({ agreed });
  const edition = ask.edition ?? lot.edition ?? agreed.edition;
  return accept({
    agreed,
    lot: {
      rule,
      packages: lot.packages.map(({ lane }, i) => ({
        gross: gross[i]!,
        ...(tare[i] === undefined ? {} : { tare: tare[i] }),
        ...(lane === undefined ? {} : { lane }),
      })),
      ...(label === undefined ? {} : { label }),
      ...(lot.size === undefined ? {} : { size: lot.size }),
      ...(tares.length === 0 ? {} : { tares: tares.map((one) => one!) }),
      ...(density === undefined ? {} : { density }),
      ...(agreed.referenceTemperature === undefined ? {} : { agreedReference: agreed.referenceTemperature }),
      ...typed,
      ...(edition === undefined ? {} : { edition }),
      ...(division?.ok ? { scale: { division: division.value.value } } : {}),
    },
  });
};
