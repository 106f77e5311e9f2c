import type { Step } from '../fill/worksheet.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { type JudgedLot, verdictWords } from './lot-document.ts';
import { entryOf, noteDocument } from './note-document.ts';
import type { FillFile } from './read-fill-file.ts';
import { rowsText } from './rows-document.ts';
import { sentenceOf } from './sentence.ts';
import { shownField } from './shown.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';

/** Members of a longer list are told by their first. */
const mostMembers = 6;

interface Shown {
  readonly wishes: UnitWishes;
  readonly locale: string;
}

/** One step of the worksheet: what went in, what came out. */
const stepText = ({ sheet, inputs, outputs, notes }: Step, { wishes, locale }: Shown): string => {
  const entry = entryOf(sheet);
  if (entry === undefined) return sheet;
  const text = entry.text.en;
  const row = (side: 'inputs' | 'outputs') =>
    Object.entries(side === 'inputs' ? inputs : outputs).flatMap(([name, value]) => {
      const field = entry.sheet[side][name];
      if (field === undefined) return [];
      const short = Array.isArray(value) && value.length > mostMembers ? value.slice(0, mostMembers) : value;
      const more = short === value ? '' : '; …';
      return [[text[side][name] ?? name, shownField(short, field, wishes, locale) + more]];
    });
  return [
    `${text.title} (${sheet})`,
    textTable([...row('inputs'), ...row('outputs')]),
    ...notes.map((note) => `  ${words.say('sheet.note', { text: noteDocument(note, sheet).text })}`),
  ].join('\n');
};

/** The same bottles as a run: lane to lane, what each can do, whether it drifted. */
const controlBlock = ({ control }: JudgedLot, shown: Shown): readonly string[] => {
  if (control === undefined) return [];
  const { series, lanesDiffer, remarks, steps } = control;
  const lines = series.map(({ lane, bottles, drift, seenAt }) =>
    words.say(`fill.drift.${drift}`, {
      lane: lane ?? words.say('fill.control.all'),
      n: bottles,
      at: seenAt ?? 0,
    }),
  );
  // charts are drawn on the page; here stands what they come to
  const told = [control.comparison, ...series.map(({ capability }) => capability)];
  return [
    [
      words.say('fill.control'),
      ...(lanesDiffer === undefined
        ? []
        : [words.say(lanesDiffer ? 'fill.control.differ' : 'fill.control.alike')]),
      ...lines,
      ...remarks.map(sentenceOf),
    ].join('\n  '),
    ...told.flatMap((at) => (at === undefined ? [] : [stepText(steps[at]!, shown)])),
  ];
};

const lotBlock = (one: JudgedLot, shown: Shown): readonly string[] => {
  const { given, lot, judged } = one;
  const title = words.say('fill.lot', {
    floor: given.floor,
    format: given.format,
    n: given.packages.length,
    rule: lot?.rule ?? words.say('fill.lot.noRule'),
    verdict: verdictWords(one),
  });
  if (lot === undefined || judged === undefined) return [title, words.say('fill.lot.askRule')];
  return [
    [
      title,
      ...[...judged.problems, ...judged.missing, ...judged.remarks].map(
        (problem) => `  ${sentenceOf(problem)}`,
      ),
    ].join('\n'),
    ...judged.steps.map((step) => stepText(step, shown)),
    ...controlBlock(one, shown),
  ];
};

/** Each lot with its verdict, what is missing, and the whole worksheet. */
export const lotsText = (lots: readonly JudgedLot[], file: FillFile<unknown>, shown: Shown): string =>
  [
    ...rowsText(file.report),
    ...(lots.length === 0 ? [words.say('fill.lot.none')] : []),
    ...lots.flatMap((one) => lotBlock(one, shown)),
    words.say('fill.caution'),
  ]
    .join('\n\n')
    .concat('\n');
