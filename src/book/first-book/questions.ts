import { places } from './blank-line.ts';
import { type Answers, assumed, type Question } from './question.ts';
import { shareOf } from './share-of.ts';
import { supplyDetails, supplyQuestions } from './supply-questions.ts';

/** Products of a first answer, with properties from memory: what decides is how dense and how viscous they are. */
const products: Readonly<
  Record<string, { readonly density: string; readonly viscosity: string } | undefined>
> = {
  water: undefined,
  juice: { density: '1.045 kg/L', viscosity: '2 mPa s' },
  milk: { density: '1.03 kg/L', viscosity: '2.2 mPa s' },
  'wine or beer': { density: '1.0 kg/L', viscosity: '1.7 mPa s' },
  syrup: { density: '1.25 kg/L', viscosity: '15 mPa s' },
  oil: { density: '0.92 kg/L', viscosity: '70 mPa s' },
};

const lanes = (answers: Answers): readonly unknown[] => {
  const count = Number(answers.lanes ?? 0);
  if (!Number.isInteger(count) || count < 1 || count > 64) return [];
  const { kv, pulses, nozzle } = answers;
  return Array.from({ length: count }, (_, i) => ({
    tag: `-Y${i + 1}`,
    kv: kv ?? assumed('Kv 1.5'),
    pulses: pulses ?? assumed('400 /L'),
    delay: assumed('50 ms'),
    closing: assumed('120 ms'),
    nozzle: 'top',
    ...(nozzle === undefined ? {} : { nozzleBore: nozzle }),
  }));
};

/** The lanes are written as a whole by each question that knows something of them. */
const putLanes = (_: string, answers: Answers) => [{ path: `${places.fill}/lanes`, value: lanes(answers) }];

/**
 * The short form in the order in which it is put: after the first twelve there is a verdict, the rest narrows it.
 * Each can be answered from a nameplate, a drawing or one telephone call.
 */
export const questions: readonly Question[] = [
  {
    id: 'title',
    whence: 'agreement',
    form: { is: 'words' },
    put: (answer) => [{ path: '/about/title', value: answer }],
  },
  {
    id: 'rate',
    whence: 'agreement',
    form: { is: 'quantity', kind: 'rate', example: '1050 bottles/h' },
    put: (answer) => [{ path: '/agreement/rates', value: [{ format: 'BOTTLE', rate: answer }] }],
  },
  {
    id: 'level',
    whence: 'drawing',
    form: { is: 'quantity', kind: 'volume', example: '1 L' },
    put: (answer) => [{ path: `${places.format}/level`, value: answer }],
  },
  {
    id: 'row',
    whence: 'drawing',
    form: { is: 'count', least: 1, most: 64, example: '4' },
    put: (answer) => [{ path: `${places.washer}/row`, value: Number(answer) }],
  },
  {
    id: 'index',
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'time', example: '12 s' },
    // how it is parted between moving and standing matters little while the whole is known
    put: (answer) => [
      { path: `${places.washer}/stroke`, value: assumed(shareOf(answer, 'time', 0.17)) },
      { path: `${places.washer}/dwell`, value: shareOf(answer, 'time', 0.83) },
    ],
  },
  {
    id: 'lanes',
    whence: 'drawing',
    form: { is: 'count', least: 1, most: 64, example: '4' },
    put: putLanes,
  },
  {
    id: 'kv',
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'flowCoefficient', example: 'Kv 2' },
    asked: (answers) => answers.lanes !== undefined,
    put: putLanes,
  },
  {
    id: 'product',
    whence: 'telephone',
    form: { is: 'choice', options: Object.keys(products) },
    put: (answer) => {
      const properties = products[answer];
      return [
        { path: `${places.product}/name`, value: answer },
        {
          path: `${places.product}/properties`,
          value:
            properties === undefined
              ? 'water'
              : [{ density: assumed(properties.density), viscosity: assumed(properties.viscosity) }],
        },
      ];
    },
  },
  ...supplyQuestions('site', places.site),
  ...supplyQuestions('builder', places.builder),
  ...supplyDetails('site', places.site),
  ...supplyDetails('builder', places.builder),
  {
    id: 'pulses',
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'pulseDensity', example: '400 /L' },
    asked: (answers) => answers.lanes !== undefined,
    put: putLanes,
  },
  {
    id: 'nozzle',
    whence: 'drawing',
    form: { is: 'quantity', kind: 'length', example: '16 mm' },
    asked: (answers) => answers.lanes !== undefined,
    put: putLanes,
  },
  {
    id: 'cap',
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'time', example: '2.4 s' },
    put: (answer) => [{ path: `${places.closing}/perBottle`, value: answer }],
  },
  {
    id: 'hold',
    whence: 'drawing',
    form: { is: 'choice', options: ['release', 'fill end', 'none'] },
    put: (answer) =>
      answer === 'none'
        ? [{ path: '/line/holdRules', value: [] }]
        : [{ path: '/line/holdRules/0/until', value: answer }],
  },
];

/** Most questions that any one set of answers is put. */
export const mostQuestions = 25;
/** Questions after which a first verdict stands. */
export const firstVerdictAfter = 12;

/** The questions that a set of answers leaves standing, in order. */
export const questionsFor = (answers: Answers): readonly Question[] =>
  questions.filter((question) => question.asked?.(answers) ?? true);
