import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import { judgeLot } from '../fill/judge-lot.ts';
import {
  type FillAsk,
  type FillStory,
  fillStory,
  lotInSi,
  samplesOfFormat,
  typedPlan,
  type WeighedTrial,
} from '../floor/fill/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import type { Problem } from '../quantity/problem.ts';
import { readEntry } from '../quantity/read-entry.ts';
import type { ContentsRule } from '../sheets/contents/reference-temperature.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { fillDocument } from './fill-document.ts';
import { writeFillSheet } from './fill-sheet.ts';
import { fillText } from './fill-text.ts';
import { type JudgedLot, judgedLot, lotDocument } from './lot-document.ts';
import { lotsText } from './lot-text.ts';
import { cliProblem } from './problems.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { type FillFileRead, readLotFile, readSamplesFile, readTrialsFile } from './read-fill-file.ts';
import type { World } from './world.ts';

const usualConfidence = 0.9;
/** Of a tolerance bound; common practice. */
const toleranceConfidence = 0.95;

interface Options {
  readonly confidence: number;
  readonly preset?: number;
  readonly variation?: number;
  readonly label?: number;
  readonly stated?: number;
  readonly tareSample?: number;
  readonly typedPlan?: NonNullable<ReturnType<typeof typedPlan>>;
  readonly measured?: NonNullable<FillAsk['measured']>;
}

/** Codes of what may be measured in the place of an allowance. */
const measurable = ['meter-flow', 'meter-viscosity', 'valve-air', 'kv-product', 'run-column'] as const;

/** `valve-air=3 % ± 1 %; meter-flow=0 %`: shares with the spread that holds the truth with 95 %; undefined where not. */
const measuredOf = (typed: string): NonNullable<FillAsk['measured']> | undefined => {
  const found: { [K in (typeof measurable)[number]]?: { shift: number; deviation: number } } = {};
  for (const one of typed.split(';')) {
    const cut = one.indexOf('=');
    const code = measurable.find((each) => each === one.slice(0, cut).trim());
    const read = readEntry(one.slice(cut + 1).trim(), 'ratio', { path: '--measured' });
    if (code === undefined || !read.ok) return undefined;
    found[code] = { shift: read.value.value, deviation: read.value.sd ?? 0 };
  }
  return found;
};

/** The numbers that were typed behind options, or what is wrong with them. */
const optionsOf = ({ values }: Call): Options | readonly Problem[] => {
  const problems: Problem[] = [];
  const wrong = (option: string, given: string, allowed: string): undefined => {
    problems.push(cliProblem('CLI_OPTION_VALUE', `--${option}`, { given, allowed }));
  };
  let confidence = usualConfidence;
  if (values.confidence !== undefined) {
    const read = parseQuantity(values.confidence, 'ratio', { path: '--confidence' });
    const share = read.ok ? (read.value.value as number) : Number.NaN;
    if (share >= 0.5 && share <= 0.999) confidence = share;
    else wrong('confidence', values.confidence, '0.5 to 0.999');
  }
  let preset: number | undefined;
  if (values.preset !== undefined) {
    preset = /^\d{1,7}$/.test(values.preset) ? Number(values.preset) : 0;
    if (preset < 1) wrong('preset', values.preset, 'a whole number from 1');
  }
  const volumeOf = (option: 'mav' | 'label' | 'stated', example: string): number | undefined => {
    const typed = values[option];
    if (typed === undefined) return undefined;
    const read = parseQuantity(typed, 'volume', { path: `--${option}` });
    return read.ok && read.value.value > 0 ? read.value.value : wrong(option, typed, example);
  };
  const variation = volumeOf('mav', 'a volume such as 15 mL');
  const label = volumeOf('label', 'a volume such as 2 L');
  const stated = volumeOf('stated', 'a volume such as 2.09 L');
  const tareSample =
    values.tares === undefined
      ? undefined
      : /^[1-9]\d{0,4}$/.test(values.tares)
        ? Number(values.tares)
        : wrong('tares', values.tares, 'a whole number from 1');
  const plan =
    values.plan === undefined
      ? undefined
      : (typedPlan(values.plan) ??
        wrong('plan', values.plan, 'packages; factor; short, such as 12; 0.826; 1'));
  const measured = values.measured === undefined ? undefined : measuredOf(values.measured);
  if (values.measured !== undefined && measured === undefined) {
    wrong('measured', values.measured, `${measurable.join(', ')}, each as valve-air=3 % ± 1 %`);
  }
  return problems.length > 0
    ? problems
    : {
        confidence,
        ...(preset === undefined ? {} : { preset }),
        ...(variation === undefined ? {} : { variation }),
        ...(label === undefined ? {} : { label }),
        ...(stated === undefined ? {} : { stated }),
        ...(tareSample === undefined ? {} : { tareSample }),
        ...(plan === undefined ? {} : { typedPlan: plan }),
        ...(measured === undefined ? {} : { measured }),
      };
};

/** Floors that the book has not, though they were asked for. */
const unknownFloors = (book: Book, { values }: Call): readonly Problem[] => {
  const allowed = (book.floors ?? []).map(({ tag }) => tag);
  return (['from', 'to'] as const).flatMap((option) => {
    const given = values[option];
    return given === undefined || allowed.length === 0 || allowed.includes(given)
      ? []
      : [cliProblem('CLI_FLOOR_UNKNOWN', `--${option}`, { given, allowed })];
  });
};

const failed = (read: FillFileRead<unknown> & { readonly ok: false }): Ended => ({
  problems: read.problems,
  heading: 'heading' in read ? read.heading : undefined,
});

/** A count that is set there, by book or call, and at which too few bottles reach their level or its mean its label. */
const fallsShort = ({ other, agreed }: FillStory): boolean => {
  if (other === undefined) return false;
  const { start, reached, presetsFrom, prediction } = other;
  const isSet = (i: number): boolean => presetsFrom[i] !== 'trials';
  if (start.goal === 'volume') {
    return (
      'labelHere' in start &&
      prediction.lanes.some(({ volume }, i) => isSet(i) && volume.upper < start.labelHere)
    );
  }
  const share = 'share' in start ? start.share : (agreed.levelGoal ?? 1);
  return (reached ?? []).some((each, i) => isSet(i) && each < share);
};

const runLots = async (book: Book, call: Call, options: Options, world: World): Promise<Ended> => {
  const { values, flags } = call;
  const { format, from, to, rule, edition } = values;
  const floor = to ?? from ?? (book.floors ?? []).find(({ role }) => role === 'bound for')?.tag;
  const usual = {
    ...(floor === undefined ? {} : { floor }),
    ...(format === undefined ? {} : { format }),
  };
  const file = await readLotFile(values.lot ?? '-', book, usual, world);
  if (!file.ok) return failed(file);
  const lots: JudgedLot[] = [];
  for (const given of file.value.values) {
    const read = lotInSi(book, given, {
      ...(rule === undefined ? {} : { rule: rule as ContentsRule }),
      ...(edition === undefined ? {} : { edition }),
      ...(options.variation === undefined ? {} : { variation: options.variation }),
      ...(options.label === undefined ? {} : { label: options.label }),
      ...(options.tareSample === undefined ? {} : { tareSample: options.tareSample }),
      ...(options.typedPlan === undefined ? {} : { typedPlan: options.typedPlan }),
      ...(values.table === undefined ? {} : { table: values.table as 'Australia' | 'New Zealand' }),
    });
    if (!read.ok) return { problems: read.problems, heading: values.lot };
    const { lot } = read.value;
    lots.push(lot === undefined ? { given } : judgedLot(given, lot, judgeLot(lot)));
  }
  if (flags.has('json')) {
    world.out(`${JSON.stringify(lotDocument(book, lots, file.value), null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(lotsText(lots, file.value, { wishes, locale: world.locale }));
  }
  const isWrong = ({ judged }: JudgedLot): boolean => (judged?.problems.length ?? 0) > 0;
  if ((file.value.report?.notUnderstood.length ?? 0) > 0 || lots.some(isWrong)) return 2;
  return lots.every(({ judged }) => judged?.verdict === 'accept') ? 0 : 1;
};

const runTrials = async (book: Book, call: Call, options: Options, world: World): Promise<Ended> => {
  const { values, flags, operands } = call;
  const { format, from, to, goal, rule } = values;
  const floor = from ?? (book.floors ?? []).find(({ role }) => role === 'built on')?.tag;
  const usual = {
    ...(floor === undefined ? {} : { floor }),
    ...(format === undefined ? {} : { format }),
  };
  // bottles may be looked at before anything was filled
  const file: FillFileRead<WeighedTrial> =
    operands[1] === undefined
      ? { ok: true, value: { values: [] } }
      : await readTrialsFile(operands[1], book, usual, world);
  if (!file.ok) return failed(file);
  const samples =
    values.samples === undefined ? undefined : await readSamplesFile(values.samples, book, usual, world);
  if (samples?.ok === false) return failed(samples);
  const ask: FillAsk = {
    trials: file.value.values,
    ...(file.value.allowances === undefined ? {} : { allowances: file.value.allowances }),
    confidence: options.confidence,
    ...(samples === undefined ? {} : { samples: samples.value.values }),
    ...(format === undefined ? {} : { format }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(options.preset === undefined ? {} : { preset: options.preset }),
    ...(goal === undefined ? {} : { goal: goal as 'level' | 'volume' }),
    ...(flags.has('tolerance') ? { tolerance: toleranceConfidence } : {}),
    ...(rule === undefined ? {} : { rule: rule as ContentsRule }),
    ...(options.variation === undefined ? {} : { variation: options.variation }),
    ...(options.label === undefined ? {} : { label: options.label }),
    ...(options.measured === undefined ? {} : { measured: options.measured }),
    ...(flags.has('no-allowances') ? { waived: true } : {}),
  };
  const story = fillStory(book, ask);
  if (story === undefined) return { problems: [cliProblem('CLI_NO_FLOORS', operands[0] ?? '-')] };
  const wishes = bookUnits(book, values.units as UnitSystem | undefined);
  const told = {
    story,
    file: file.value,
    wishes,
    locale: world.locale,
    ...(samples === undefined
      ? {}
      : { samples: samplesOfFormat(book, samples.value.values, format, options.stated) }),
  };
  world.out(
    flags.has('json')
      ? `${JSON.stringify(fillDocument(book, told, options.confidence), null, 2)}\n`
      : fillText(book, told),
  );
  const reports = [file.value.report, samples?.value.report];
  const unread = reports.some((report) => (report?.notUnderstood.length ?? 0) > 0);
  if (
    unread ||
    (told.samples?.refused.length ?? 0) > 0 ||
    story.read.refused.length > 0 ||
    story.estimate?.kind === 'refused'
  )
    return 2;
  return fallsShort(story) ? 1 : 0;
};

/** Prints what trials say and foretell, or how a lot is judged; or writes a sheet to be filled in. */
export const runFill = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values } = call;
  const [path = '-', trials] = operands;
  const inputs = [path, trials, values.lot, values.samples].filter((one) => one === '-');
  if (inputs.length > 1) return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const { lot, sheet, samples } = values;
  if ([trials, lot, sheet, samples].every((one) => one === undefined)) {
    return { problems: [cliProblem('CLI_OPERAND_MISSING', 'fill', { allowed: 'BOOK.json TRIALS' })] };
  }
  const options = optionsOf(call);
  if ('length' in options) return { problems: options };
  const read = await readBookFile(path, world);
  if (!read.ok) return { problems: read.problems, heading: headingOf(path, read) };
  const book = read.value;
  const vain = [...askedInVain(book, path, call), ...unknownFloors(book, call)];
  if (vain.length > 0) return { problems: vain };
  if (values.sheet !== undefined) return await writeFillSheet(book, call, values.sheet, world);
  return values.lot === undefined
    ? await runTrials(book, call, options, world)
    : await runLots(book, call, options, world);
};
