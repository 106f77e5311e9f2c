import type { Book } from '../../../book/index.ts';
import { toSi } from '../../../quantity/index.ts';
import { coldestPointSheet } from '../../../sheets/air/coldest-point.ts';
import { compressorCapacitySheet } from '../../../sheets/air/compressor-capacity.ts';
import { compressorStartsSheet } from '../../../sheets/air/compressor-starts.ts';
import { compressorsTogetherSheet } from '../../../sheets/air/compressors-together.ts';
import { dryerCapacitySheet } from '../../../sheets/air/dryer-capacity.ts';
import { leastPressureSheet } from '../../../sheets/air/least-pressure.ts';
import { receiverBandSheet } from '../../../sheets/air/receiver-band.ts';
import { receiverLeastSheet } from '../../../sheets/air/receiver-least.ts';
import { switchingBandSheet } from '../../../sheets/air/switching-band.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { runLevers } from '../run-levers.ts';
import { shiftTime } from '../shift-time.ts';
import { quantityLever, upTo } from '../steps.ts';
import { allDraw, strokeOut } from './air-demand.ts';
import { intakeState, productAirAnswer, purityAnswer, treatedDewPoint } from './air-quality.ts';
import { dropPressure, receiverLow, usualBand } from './drop-pressure.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';

/** Share of the time for which a piston compressor may run loaded, memory. */
const usualDuty = 0.7;
/** Air that a heatless desiccant dryer blows off, memory. */
const usualPurge = 0.15;

/** Compressors that run, as one. */
const delivery = (c: Calculation): Known | undefined => {
  const path = `${c.floorPath}/air/compressor`;
  const one = c.needed(`${path}/freeAir`, 'actualAirFlow');
  const count = c.plain(`${path}/count`, 1)!;
  return count.value === 1 ? one : c.run(compressorsTogetherSheet, { freeAir: one, count })?.together;
};

export const compressorAt = (c: Calculation) =>
  c.once('compressor', (c) => {
    const path = `${c.floorPath}/air`;
    const { temperature, humidity } = intakeState(c);
    const desiccant = c.word(`${path}/dryer/kind`)?.value === 'desiccant';
    const none = (of: string): Known => ({ value: 0, from: { path: of, assumed: true } });
    return c.run(compressorCapacitySheet, {
      demand: allDraw(c, 'averageFlow'),
      counting: { value: 'humidity left out', from: { path: '/line/cylinders' } },
      altitude: c.numberOr(`${c.floorPath}/room/altitude`, 'length', 0),
      temperature,
      relativeHumidity: humidity,
      delivery: delivery(c),
      // leaks stand in the demand already; what may be added later is the reader's margin
      leak: none(`${path}/otherUsers`),
      growth: none(`${path}/otherUsers`),
      purge: desiccant ? c.numberOr(`${path}/dryer/purge`, 'ratio', usualPurge) : none(`${path}/dryer`),
      duty: c.numberOr(`${path}/compressor/duty`, 'ratio', usualDuty),
    });
  });

const receiverAnswer = (c: Calculation): Answer => {
  const path = `${c.floorPath}/air`;
  const drops = c.book.line?.airDrops ?? [];
  const have = c.needed(`${path}/receiver`, 'volume');
  const high = receiverLow(c);
  const { cylinders = [] } = c.book.line ?? {};
  const longest = cylinders
    .map((_, i) => strokeOut(c, i))
    .reduce<Known | undefined>((a, b) => (a === undefined || b.value > a.value ? b : a), undefined);
  const arrives = dropPressure(c, drops[0]!.tag);
  const needed = c.needed('/line/airDrops/0/pressure', 'gaugePressure');
  if (high === undefined || arrives === undefined || needed === undefined) return { have };
  // what may still be lost at the receiver before the drop has too little
  const low = c.run(receiverLeastSheet, { receiver: high, arrives, needed })?.least;
  if (low === undefined || low.value >= high.value) return { have, verdict: 'short' };
  return {
    have,
    demand: c.run(receiverBandSheet, {
      time: longest,
      demand: allDraw(c, 'peakFlow'),
      supply: compressorAt(c)?.capacity,
      high,
      low,
      atmosphere: atmosphereHere(c),
      temperature: airTemperature(c),
    })?.volume,
  };
};

const startsAnswer = (c: Calculation): Answer => {
  const path = `${c.floorPath}/air/compressor`;
  const allowed = c.plain(`${path}/startsPerHour`);
  if (allowed === undefined) c.miss(`${path}/startsPerHour`);
  const demand: Known | undefined =
    allowed === undefined ? undefined : { value: allowed.value / 3600, from: allowed.from };
  const low = receiverLow(c);
  const cutOut = c.number(`${path}/cutOut`, 'gaugePressure');
  const band: Known | undefined =
    cutOut === undefined
      ? { value: usualBand, from: { path: `${path}/cutOut`, assumed: true } }
      : c.run(switchingBandSheet, { cutOut, cutIn: low })?.band;
  if (cutOut === undefined) c.assume(`${path}/cutOut`);
  return {
    demand,
    have: c.run(compressorStartsSheet, {
      receiver: c.needed(`${c.floorPath}/air/receiver`, 'volume'),
      delivery: compressorAt(c)?.capacity,
      demand: allDraw(c, 'averageFlow'),
      band,
      allowed: demand,
    })?.starts,
  };
};

export const routeAt = (c: Calculation) =>
  c.once('route', (c) => {
    const pressure = receiverLow(c);
    return c.run(coldestPointSheet, {
      dewPoint: treatedDewPoint(c),
      dewPointPressure: pressure,
      atmosphere: atmosphereHere(c),
      pressures: [pressure],
      temperatures: [c.needed(`${c.floorPath}/air/coldest`, 'temperature')],
      flow: allDraw(c, 'averageFlow'),
      time: shiftTime(c),
    });
  });

const routeAnswer = (c: Calculation): Answer => ({
  have: c.needed(`${c.floorPath}/air/coldest`, 'temperature'),
  demand: routeAt(c)?.dewPoints[0],
});

/** Warmer than the rating points of table B, which goes with 35 degC at the inlet; table A with 38. */
const ratedHot = 309.65;

/** Which of the two makers' tables goes with the rating of the dryer; the cooler one where nobody gave it. */
const dryerTable = (c: Calculation, path: string): Known<'A' | 'B'> => {
  const rated = c.number(`${path}/ratedInlet`, 'temperature');
  if (rated === undefined) c.assume(`${path}/ratedInlet`);
  return rated === undefined
    ? { value: 'B', from: { path: `${path}/ratedInlet`, assumed: true } }
    : { value: rated.value > ratedHot ? 'A' : 'B', from: rated.from };
};

const dryerAnswer = (c: Calculation): Answer => {
  const path = `${c.floorPath}/air/dryer`;
  const first = c.word(`${path}/place`)?.value === 'before receiver';
  const hottest =
    c.number(`${c.floorPath}/room/highest`, 'temperature') ??
    c.needed(`${c.floorPath}/room/ambient`, 'temperature');
  return {
    have: c.needed(`${path}/flow`, 'normalAirFlow'),
    demand: c.run(dryerCapacitySheet, {
      table: dryerTable(c, path),
      ratedFlow: c.needed(`${path}/flow`, 'normalAirFlow'),
      pressure: receiverLow(c),
      ambient: hottest,
      inlet: c.needed(`${path}/inlet`, 'temperature'),
      dewPoint: treatedDewPoint(c),
      flow: allDraw(c, first ? 'averageFlow' : 'peakFlow'),
    })?.ratedNeeded,
  };
};

/** Dryers from the least change to the greatest: what a refrigerated one can't reach wants desiccant. */
const dryerSteps = [
  { kind: 'refrigerated', dewPoint: 3 },
  { kind: 'desiccant', dewPoint: -20 },
  { kind: 'desiccant', dewPoint: -40 },
  { kind: 'desiccant', dewPoint: -70 },
] as const;

const dryerLever = (c: Calculation) => {
  const path = `${c.floorPath}/air/dryer`;
  return [
    {
      id: 'dryer',
      path: `${path}/dewPoint`,
      kind: 'temperature' as const,
      steps: () =>
        dryerSteps.map(({ kind, dewPoint }) => ({
          patches: [
            { path: `${path}/kind`, value: kind },
            { path: `${path}/dewPoint`, value: `${dewPoint} degC` },
          ],
          value: dewPoint + 273.15,
          text: `${kind}, ${dewPoint} degC`,
        })),
    },
  ];
};

/** Tenths of a bar, or single psi, above what is set now. */
const setHigher = (now: number, unit: string): readonly number[] => {
  const step = unit.startsWith('psi') ? 1 : unit.startsWith('k') ? 10 : 0.1;
  return Array.from({ length: 40 }, (_, i) => Number((now + step * (i + 1)).toPrecision(6)));
};

const pressureLevers = (c: Calculation): readonly UtilityLever[] => [
  ...runLevers(c.book, 'bore', `${c.floorPath}/air/run`, c.book.floors![c.floor]!.air?.run ?? []),
  ...quantityLever(c.book, {
    id: 'regulatorSet',
    path: `${c.floorPath}/air/regulator/set`,
    kind: 'gaugePressure',
    numbers: setHigher,
  }),
  ...quantityLever(c.book, {
    id: 'cutIn',
    path: `${c.floorPath}/air/compressor/cutIn`,
    kind: 'gaugePressure',
    numbers: setHigher,
  }),
];

/** Bores of cylinders that are made, mm; ISO 15552 and 6432, from memory. */
const cylinderBores = [8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200];

const cylinderLever = (c: Calculation, path: string): readonly UtilityLever[] =>
  quantityLever(c.book, {
    id: 'cylinderBore',
    path,
    kind: 'length',
    numbers: (now, unit) => {
      const millimetre = 0.001 / toSi(1, 'length', unit);
      return cylinderBores
        .map((bore) => Number((bore * millimetre).toPrecision(6)))
        .filter((bore) => bore > now * 1.001);
    },
  });

/** What the line asks of the compressed air of a floor; nothing where it takes none. */
export const airNeeds = (book: Book): readonly Need[] => {
  const drops = book.line?.airDrops ?? [];
  const first = drops[0];
  if (first === undefined) return [];
  const common = { utility: 'air', tieIn: first.tieIn } as const;
  const freeAir = (c: Calculation) =>
    quantityLever(c.book, {
      id: 'freeAir',
      path: `${c.floorPath}/air/compressor/freeAir`,
      kind: 'actualAirFlow',
      numbers: upTo(30),
    });
  const receiver = (c: Calculation) =>
    quantityLever(c.book, {
      id: 'receiver',
      path: `${c.floorPath}/air/receiver`,
      kind: 'volume',
      numbers: upTo(30),
    });
  return [
    ...drops.map(
      (drop, i): Need => ({
        ...common,
        question: 'airPressure',
        of: drop.tag,
        tieIn: drop.tieIn,
        sense: 'least',
        kind: 'gaugePressure',
        answer: (c) => ({
          demand: c.needed(`/line/airDrops/${i}/pressure`, 'gaugePressure'),
          have: dropPressure(c, drop.tag),
        }),
        levers: pressureLevers,
      }),
    ),
    {
      ...common,
      question: 'airFlow',
      sense: 'least',
      kind: 'actualAirFlow',
      answer: (c) => ({ demand: compressorAt(c)?.installedNeeded, have: delivery(c) }),
      levers: freeAir,
    },
    {
      ...common,
      question: 'airReceiver',
      sense: 'least',
      kind: 'volume',
      answer: receiverAnswer,
      levers: receiver,
    },
    {
      ...common,
      question: 'airStarts',
      sense: 'most',
      kind: 'startRate',
      answer: startsAnswer,
      levers: receiver,
    },
    {
      ...common,
      question: 'airRoute',
      sense: 'least',
      kind: 'temperature',
      answer: routeAnswer,
      levers: dryerLever,
    },
    {
      ...common,
      question: 'airDryer',
      sense: 'least',
      kind: 'normalAirFlow',
      answer: dryerAnswer,
      levers: (c) =>
        quantityLever(c.book, {
          id: 'dryerFlow',
          path: `${c.floorPath}/air/dryer/flow`,
          kind: 'normalAirFlow',
          numbers: upTo(30),
        }),
    },
    ...drops.flatMap((drop, i): Need[] => [
      {
        ...common,
        question: 'airPurity',
        of: drop.tag,
        tieIn: drop.tieIn,
        sense: 'least',
        kind: 'count',
        answer: (c) => purityAnswer(c, `/line/airDrops/${i}`),
        levers: dryerLever,
      },
    ]),
    ...((book.line?.blowOffs ?? []).some((blow) => blow.productContact === true)
      ? [
          {
            ...common,
            question: 'productAir',
            sense: 'most',
            kind: 'temperature',
            answer: productAirAnswer,
            levers: dryerLever,
          } as const,
        ]
      : []),
    ...(book.line?.cylinders ?? []).flatMap((cylinder, i): Need[] =>
      cylinder.force === undefined
        ? []
        : [
            {
              ...common,
              question: 'cylinderForce',
              of: cylinder.tag,
              sense: 'least',
              kind: 'gaugePressure',
              answer: (c) => ({
                demand: c.run(leastPressureSheet, {
                  bore: c.needed(`/line/cylinders/${i}/bore`, 'length'),
                  rod: c.numberOr(`/line/cylinders/${i}/rod`, 'length', 0),
                  load: c.needed(`/line/cylinders/${i}/force`, 'force'),
                })?.leastPressure,
                have: dropPressure(c, cylinder.drop ?? first.tag),
              }),
              levers: (c) => [...cylinderLever(c, `/line/cylinders/${i}/bore`), ...pressureLevers(c)],
            },
          ],
    ),
  ];
};
