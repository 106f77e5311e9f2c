import type { Book } from '../../../book/index.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { runLevers } from '../run-levers.ts';
import { falling, quantityLever, upTo, warmer, wordLever } from '../steps.ts';
import { saysNone, tieInPressure } from './tie-in-pressure.ts';
import { type TieInAt, tieInsOf, waterDraw, zonesFedBy } from './water-draw.ts';
import { conductivityAnswer, magneticLanes, siteWaterAnswer } from './water-quality.ts';

/** Tenths of a bar, or single psi, above what is there now. */
const higher = (now: number, unit: string): readonly number[] => {
  const step = unit.startsWith('psi') ? 1 : unit.startsWith('k') ? 10 : 0.1;
  return Array.from({ length: 60 }, (_, i) => Number((now + step * (i + 1)).toPrecision(6)));
};

/** Ten milligrams of calcium carbonate in a litre, about half a German degree. */
const softened = 0.01;

const pressureLever = (c: Calculation, path: string): readonly UtilityLever[] =>
  quantityLever(c.book, { id: 'waterPressure', path, kind: 'gaugePressure', numbers: higher });

const backflowAnswer = (c: Calculation, at: TieInAt): Answer => {
  const fitted = c.neededWord(`${c.floorPath}/water/backflow`);
  const said = {
    ...(at.tieIn.quality === undefined ? {} : { demand: at.tieIn.quality }),
    ...(fitted === undefined ? {} : { have: fitted.value }),
  };
  if (fitted === undefined) return { verdict: 'unknown', said };
  c.note('BACKFLOW_LOCAL');
  // which device is enough is for the water code to say
  return { verdict: saysNone(fitted.value) ? 'short' : 'carries', said };
};

/** The hottest zone that a hot tie-in feeds. */
const hottestFed = (c: Calculation, at: TieInAt): Known | undefined => {
  const said = c.number(`${at.path}/temperature`, 'temperature');
  const zones = zonesFedBy(c.book, at).map(({ path }) => c.needed(`${path}/temperature`, 'temperature'));
  return greatestOf(c, [said, ...zones]);
};

const coldNeeds = (book: Book, floor: number, at: TieInAt): readonly Need[] => {
  const common = { utility: 'water', of: at.tieIn.tag, tieIn: at.tieIn.tag } as const;
  const { water } = book.floors?.[floor] ?? {};
  return [
    // a source with its curve is judged by the pressure that it keeps at the draw
    ...(water?.flow === undefined && water?.source !== undefined
      ? []
      : [
          {
            ...common,
            question: 'waterFlow',
            sense: 'least',
            kind: 'volumeFlow',
            answer: (c) => ({
              demand: waterDraw(c, at),
              have: c.needed(`${c.floorPath}/water/flow`, 'volumeFlow'),
            }),
            levers: (c) =>
              quantityLever(c.book, {
                id: 'waterFlow',
                path: `${c.floorPath}/water/flow`,
                kind: 'volumeFlow',
                numbers: upTo(40),
              }),
          } satisfies Need,
        ]),
    {
      ...common,
      question: 'waterPressure',
      sense: 'least',
      kind: 'gaugePressure',
      answer: (c) => ({
        demand: c.needed(`${at.path}/pressure`, 'gaugePressure'),
        have: tieInPressure(c, at),
      }),
      levers: (c) => [
        ...runLevers(
          c.book,
          'waterBore',
          `${c.floorPath}/water/run`,
          c.book.floors![c.floor]!.water?.run ?? [],
        ),
        ...pressureLever(c, `${c.floorPath}/water/pressure`),
      ],
    },
    {
      ...common,
      question: 'backflow',
      sense: 'least',
      kind: 'count',
      answer: (c) => backflowAnswer(c, at),
      levers: (c) =>
        wordLever(
          'backflow',
          [`${c.floorPath}/water/backflow`],
          'as the water code asks',
          'as the water code asks',
        ),
    },
  ];
};

const hotNeeds = (at: TieInAt): readonly Need[] => {
  const common = { utility: 'water', of: at.tieIn.tag, tieIn: at.tieIn.tag, sense: 'least' } as const;
  return [
    {
      ...common,
      question: 'hotWaterFlow',
      kind: 'volumeFlow',
      answer: (c) => ({
        demand: waterDraw(c, at),
        have: c.needed(`${c.floorPath}/water/hot/flow`, 'volumeFlow'),
      }),
      levers: (c) =>
        quantityLever(c.book, {
          id: 'hotWaterFlow',
          path: `${c.floorPath}/water/hot/flow`,
          kind: 'volumeFlow',
          numbers: upTo(40),
        }),
    },
    {
      ...common,
      question: 'hotWaterTemperature',
      kind: 'temperature',
      answer: (c) => ({
        demand: hottestFed(c, at),
        have: c.needed(`${c.floorPath}/water/hot/temperature`, 'temperature'),
      }),
      levers: (c) =>
        quantityLever(c.book, {
          id: 'hotWaterTemperature',
          path: `${c.floorPath}/water/hot/temperature`,
          kind: 'temperature',
          numbers: warmer,
        }),
    },
    ...(at.tieIn.pressure === undefined
      ? []
      : [
          {
            ...common,
            question: 'waterPressure',
            kind: 'gaugePressure',
            answer: (c) => ({
              demand: c.needed(`${at.path}/pressure`, 'gaugePressure'),
              have: tieInPressure(c, at),
            }),
            levers: (c) => pressureLever(c, `${c.floorPath}/water/hot/pressure`),
          } satisfies Need,
        ]),
  ];
};

const hardnessNeed = (book: Book, tieIn: string | undefined): readonly Need[] => {
  const washer = (book.line?.stations ?? []).findIndex(
    (station) => station.kind === 'washer' && station.highestHardness !== undefined,
  );
  if (washer < 0) return [];
  return [
    {
      question: 'waterHardness',
      utility: 'water',
      tieIn,
      sense: 'most',
      kind: 'waterHardness',
      answer: (c) => ({
        demand: c.needed(`/line/stations/${washer}/highestHardness`, 'waterHardness'),
        have: c.needed(`${c.floorPath}/water/hardness`, 'waterHardness'),
      }),
      levers: (c) =>
        quantityLever(c.book, {
          id: 'softener',
          path: `${c.floorPath}/water/hardness`,
          kind: 'waterHardness',
          numbers: falling('waterHardness', softened, 200),
        }),
    },
  ];
};

/** What the line asks of the water of a floor; nothing where it takes none. */
export const waterNeeds = (book: Book, floor: number): readonly Need[] => {
  const cold = tieInsOf(book, 'water');
  const first = cold[0]?.tieIn.tag;
  return [
    ...cold.flatMap((at) => coldNeeds(book, floor, at)),
    ...tieInsOf(book, 'hot water').flatMap(hotNeeds),
    ...(magneticLanes(book).length === 0
      ? []
      : [
          {
            question: 'meterConductivity',
            utility: 'water',
            tieIn: tieInsOf(book, 'product')[0]?.tieIn.tag,
            sense: 'least',
            kind: 'conductivity',
            answer: conductivityAnswer,
            levers: (c) => [
              ...wordLever(
                'otherMeter',
                magneticLanes(c.book).map(({ path }) => `${path}/meter/kind`),
                'turbine',
                'turbine',
              ),
            ],
          } satisfies Need,
        ]),
    ...(cold.length === 0
      ? []
      : [
          ...hardnessNeed(book, first),
          {
            question: 'siteWater',
            utility: 'water',
            tieIn: first,
            sense: 'least',
            kind: 'count',
            answer: siteWaterAnswer,
          } satisfies Need,
        ]),
  ];
};
