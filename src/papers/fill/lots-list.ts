import type { Field, Value } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import { problemSentence } from '../../text/problem-sentence.ts';
import { asWritten } from '../as-written.ts';
import type { PaperWords } from '../paper-words.ts';
import { words } from '../words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { valueText } from '../workings/printed-working.ts';
import type { CertifiedLot } from './fill-of.ts';
import { type LotChart, lotChart } from './lot-chart.ts';

export interface PrintedLot {
  readonly title: string;
  readonly verdict: string;
  readonly rejected: boolean;
  /** Label, size, temperature, density, balance, by whom. */
  readonly about: string;
  readonly bottles: readonly { readonly lane: string; readonly gross: string; readonly tare: string }[];
  /** What the rule's own step gave. */
  readonly came: readonly { readonly name: string; readonly value: string }[];
  /** Marks of all steps, which stand in the appendix with their numbers. */
  readonly worksheet: Marks;
  readonly remarks: readonly string[];
  readonly chart?: LotChart;
}

const cameOut = (
  outputs: Readonly<Record<string, Value>>,
  sheet: string,
  paper: PaperWords,
): PrintedLot['came'] => {
  const entry = registry.get(sheet);
  return Object.entries(outputs).map(([name, value]) => ({
    name: paper.inWords(entry?.text.en.outputs[name] ?? name),
    value: valueText(value, entry?.sheet.outputs[name] as Field | undefined, paper),
  }));
};

/** A lot that was weighed, with the verdict of its rule and the whole way to it. */
export const printedLot = (certified: CertifiedLot, citations: Citations, paper: PaperWords): PrintedLot => {
  const { say, book, quantity } = paper;
  const { given, lot, judged, problems } = certified;
  const chart = lotChart(certified, paper);
  const format = book.line?.formats?.find(({ tag }) => tag === given.format)?.name ?? given.format;
  const steps = judged?.steps ?? [];
  const marks = citations.worksheet(given.floor, steps);
  const step = judged?.judged === undefined ? undefined : steps[judged.judged];
  const verdict = judged?.verdict ?? 'not decided';
  const told: readonly (readonly [string, string | undefined])[] = [
    ['label', lot?.label === undefined ? undefined : quantity(lot.label, 'volume', 4).text],
    ['size', given.size === undefined ? undefined : String(given.size)],
    ['temperature', given.temperature],
    ['density', given.density],
    ['balance', [given.instrument, given.resolution].filter((one) => one !== undefined).join(', ')],
    ['edition', lot?.edition],
    [
      'by',
      [given.by, given.at === undefined ? undefined : paper.moment(given.at)]
        .filter((one) => one !== undefined)
        .join(', '),
    ],
    ['remark', given.remark],
  ];
  return {
    title: say('filled.lot', { n: given.packages.length, format }),
    verdict: say('filled.lot.verdict', {
      rule: lot?.rule ?? say('filled.lot.noRule'),
      verdict: say(`fill.verdict.${verdict}`, { more: judged?.more ?? 0 }),
    }),
    rejected: verdict === 'reject',
    about: told
      .filter(([, text]) => text !== undefined && text !== '')
      .map(([word, text]) => say(`filled.lot.${word}`, { text: asWritten(text ?? '', paper) }))
      .join('; '),
    bottles: given.packages.map(({ lane = '', gross, tare = '' }) => ({
      lane,
      gross: asWritten(gross, paper),
      tare: asWritten(tare, paper),
    })),
    came: step === undefined ? [] : cameOut(step.outputs, step.sheet, paper),
    worksheet: marks,
    ...(chart === undefined ? {} : { chart }),
    remarks: [
      ...problems,
      ...(judged?.problems ?? []),
      ...(judged?.missing ?? []),
      ...(judged?.remarks ?? []),
    ].map((problem) => problemSentence(words, problem)),
  };
};
