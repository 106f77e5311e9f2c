import type { FloorAssessment, Verdict } from '../../floor/assessment.ts';
import { figureText, hasText, utilityVerdictText } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Marks } from '../workings/citations.ts';

/** One of the first things that an electrician looks for. */
export interface Glance {
  readonly name: string;
  readonly text: string;
  readonly marks: Marks;
  /** Absent where nothing is judged. */
  readonly is?: Verdict;
}

/** Questions of the power by what an electrician calls them, in the order in which a supply is laid. */
const judged: readonly (readonly [word: string, question: string])[] = [
  ['feeder', 'feederAmpacity'],
  ['protection', 'protectionCarries'],
  ['fault', 'faultCurrent'],
  ['transformer', 'stepTransformer'],
  ['earthing', 'earthing'],
  ['unbalance', 'voltageUnbalance'],
];

/** As the book writes a quantity, with or without who said it. */
const written = (entry: unknown): string | undefined => {
  const value = typeof entry === 'object' && entry !== null && 'value' in entry ? entry.value : entry;
  return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;
};

const joined = (parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== '').join(', ');

/** What is fitted on this floor, beside the numbers of a question. */
const fitted = (question: string, floorTag: string, { book, sayOr }: PaperWords): string => {
  const power = book.floors?.find(({ tag }) => tag === floorTag)?.power;
  const said = (word: string | undefined): string | undefined =>
    word === undefined ? undefined : sayOr(`word.${word}`, word);
  if (question === 'feederAmpacity') {
    const { size, material, length } = power?.feeder ?? {};
    return joined([written(size), said(material), written(length)]);
  }
  if (question === 'stepTransformer') {
    const { primary, secondary } = power?.stepTransformer ?? {};
    return primary === undefined || secondary === undefined
      ? ''
      : `${written(primary)} → ${written(secondary)}`;
  }
  return question === 'protectionCarries' ? joined([said(power?.protection?.kind)]) : '';
};

/** Supply, loads, sizes, protection, earthing and unbalance of a floor, each with its verdict. */
export const powerGlance = (
  floor: FloorAssessment,
  mark: (working: number | undefined) => Marks,
  paper: PaperWords,
): readonly Glance[] => {
  const { book, say } = paper;
  const { findings, figures } = floor.utilities;
  const power = book.floors?.find(({ tag }) => tag === floor.floor)?.power;
  const tieIns = (book.line?.tieIns ?? []).filter(({ kind }) => kind === 'power');
  const drawn = ['runningCurrent', 'apparentPower'].flatMap((id) => {
    const figure = figures.find((one) => one.id === id)?.figure;
    return figure?.value === undefined ? [] : [figure];
  });
  const plain: readonly (readonly [word: string, text: string, marks?: Marks])[] = [
    ['tieIn', tieIns.map(({ tag, name, connection }) => joined([tag, name, connection])).join('; ')],
    ['supply', power?.system ?? joined([written(power?.voltage), written(power?.frequency)])],
    [
      'load',
      joined(drawn.map((figure) => figureText(figure, paper))),
      drawn.flatMap(({ working }) => mark(working)),
    ],
  ];
  return [
    ...plain
      .filter(([, text]) => text !== '')
      .map(([word, text, marks = []]) => ({ name: say(`preparation.glance.${word}`), text, marks })),
    ...judged.flatMap(([word, question]): readonly Glance[] =>
      findings
        .filter((one) => one.question === question)
        .map((finding) => {
          const about = fitted(question, floor.floor, paper);
          const has = joined([hasText(finding, paper), about]);
          const verdict =
            finding.demand.value === undefined
              ? say(`verdict.${finding.verdict}`)
              : utilityVerdictText(finding, paper);
          return {
            name: say(`preparation.glance.${word}`),
            text: joined(
              finding.have.value === undefined && finding.verdict === 'unknown' ? [verdict] : [has, verdict],
            ),
            marks: [finding.have.working, finding.demand.working].flatMap((one) => mark(one)),
            is: finding.verdict,
          };
        }),
    ),
  ];
};
