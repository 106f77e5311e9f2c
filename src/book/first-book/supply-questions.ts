import type { Patch } from '../patch-book.ts';
import { type Answers, assumed, type Question } from './question.ts';
import { shareOf } from './share-of.ts';

export const sourceOptions = ['tank above', 'main', 'pump'] as const;

/** Taken where other answers speak of a supply and nothing says of which kind. */
export const usualSource = 'tank above';

/** Assumed until it is known: how long and how crooked a run of this trade usually is. */
const usualRun = {
  length: assumed('12 m'),
  material: 'hose',
  fittings: [{ kind: 'elbow, medium radius', count: 4 }],
};

/** The run as far as it is known: without a bore nothing can be said of what it passes. */
const pieceOf = (answers: Answers, id: string): unknown => ({
  kind: 'pipe',
  name: 'run',
  ...usualRun,
  ...(answers[`${id}Bore`] === undefined ? {} : { bore: answers[`${id}Bore`] }),
  ...(answers[`${id}Length`] === undefined ? {} : { length: answers[`${id}Length`] }),
});

const pressureQuestion = (id: string, floor: string, kind: string): Question => {
  const source = `${floor}/supply/source`;
  const asked = (answers: Answers): boolean => (answers[`${id}Source`] ?? usualSource) === kind;
  if (kind === 'tank above') {
    return {
      id: `${id}Surface`,
      whence: 'drawing',
      form: { is: 'quantity', kind: 'length', example: '4.5 m' },
      asked,
      put: (answer) => [{ path: `${source}/surface`, value: answer }],
    };
  }
  if (kind === 'main') {
    return {
      id: `${id}Pressure`,
      whence: 'telephone',
      form: { is: 'quantity', kind: 'gaugePressure', example: '3 bar' },
      asked,
      put: (answer) => [
        { path: `${source}/static`, value: answer },
        // until a flow test has been made: a main that keeps two thirds at a moderate draw
        { path: `${source}/residual`, value: assumed(shareOf(answer, 'gaugePressure', 0.67)) },
        { path: `${source}/testFlow`, value: assumed('50 L/min') },
      ],
    };
  }
  return {
    id: `${id}Head`,
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'length', example: '18 m' },
    asked,
    put: (answer, answers) => [
      {
        path: `${source}/curve`,
        value: [{ head: answer, flow: answers[`${id}Duty`] ?? assumed('4 m3/h') }],
      },
    ],
  };
};

const sourceFor = (kind: string): unknown => {
  switch (kind) {
    case 'main':
      return { kind: 'main', exponent: 2, height: assumed('1 m') };
    case 'pump':
      return { kind: 'pumped', suctionSurface: assumed('1 m') };
    default:
      return { kind: 'gravity' };
  }
};

/** Where the liquid comes from on one floor, how much drives it, and how wide the run is: enough for a first verdict. */
export const supplyQuestions = (id: string, floor: string): readonly Question[] => [
  {
    id: `${id}Source`,
    whence: 'telephone',
    form: { is: 'choice', options: sourceOptions },
    put: (answer, answers): readonly Patch[] => [
      { path: `${floor}/supply`, value: { source: sourceFor(answer), run: [pieceOf(answers, id)] } },
    ],
  },
  ...sourceOptions.map((kind) => pressureQuestion(id, floor, kind)),
  {
    id: `${id}Bore`,
    whence: 'drawing',
    form: { is: 'quantity', kind: 'length', example: '35 mm' },
    // written with the source, so that a run whose bore is not known is a run all the same
    put: (_, answers) => [{ path: `${floor}/supply/run`, value: [pieceOf(answers, id)] }],
  },
];

/** What narrows the first verdict of a floor. */
export const supplyDetails = (id: string, floor: string): readonly Question[] => [
  {
    id: `${id}Length`,
    whence: 'drawing',
    form: { is: 'quantity', kind: 'length', example: '12 m' },
    asked: (answers) => answers[`${id}Bore`] !== undefined,
    // the question on the bore writes the piece; this answer is taken along there
    put: () => [],
  },
  {
    id: `${id}MakeUp`,
    whence: 'telephone',
    form: { is: 'quantity', kind: 'volumeFlow', example: '40 L/min' },
    asked: (answers) => (answers[`${id}Source`] ?? usualSource) === 'tank above',
    put: (answer) => [{ path: `${floor}/supply/source/makeUp`, value: answer }],
  },
  {
    id: `${id}Area`,
    whence: 'drawing',
    form: { is: 'quantity', kind: 'area', example: '1.8 m2' },
    asked: (answers) => (answers[`${id}Source`] ?? usualSource) === 'tank above',
    put: (answer) => [{ path: `${floor}/supply/source/area`, value: answer }],
  },
  {
    id: `${id}Test`,
    whence: 'telephone',
    form: { is: 'quantity', kind: 'gaugePressure', example: '2.2 bar' },
    asked: (answers) => answers[`${id}Source`] === 'main',
    put: (answer) => [{ path: `${floor}/supply/source/residual`, value: answer }],
  },
  {
    id: `${id}TestFlow`,
    whence: 'telephone',
    form: { is: 'quantity', kind: 'volumeFlow', example: '30 L/min' },
    asked: (answers) => answers[`${id}Source`] === 'main',
    put: (answer) => [{ path: `${floor}/supply/source/testFlow`, value: answer }],
  },
  {
    id: `${id}Duty`,
    whence: 'nameplate',
    form: { is: 'quantity', kind: 'volumeFlow', example: '6 m3/h' },
    asked: (answers) => answers[`${id}Source`] === 'pump',
    // the question on the head writes the curve; this answer is taken along there
    put: () => [],
  },
];
