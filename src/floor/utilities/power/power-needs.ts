import type { Book } from '../../../book/index.ts';
import { type Earthing, earthingSheet } from '../../../sheets/power/earthing.ts';
import { standardRatings } from '../../../sheets/power/standard-ratings.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { quantityLever, wordLever } from '../steps.ts';
import { faultWithMotors } from './fault.ts';
import { feederAllowed, runningDrop, sizeLevers, startingDrop } from './feeder.ts';
import { feederDemand, feederRunning, machineSupplyUs } from './machine-load.ts';
import { motorNeeds } from './motor-needs.ts';
import { rulesOf } from './rule-set.ts';
import { stepTransformerLever, stepTransformerNeed } from './step-transformer.ts';
import { voltageAnswer } from './supply-voltage.ts';
import { balanceLever, unbalanceAnswer } from './voltage-unbalance.ts';

/** What a feeder may lose: NEC 215.2 informational note and IEC 60364-5-52 annex G both name 5 % in all. */
const usualDrop = 0.05;
/** While the largest motor starts, common practice. */
const usualStartingDrop = 0.15;
const arrangements: Readonly<Record<string, Earthing | undefined>> = {
  'TN-S': 'tn-s',
  'TN-C-S': 'tn-c-s',
  TT: 'tt',
  IT: 'it',
  'solidly grounded wye': 'grounded-wye',
  'corner-grounded delta': 'corner-grounded-delta',
  'high-leg delta': 'high-leg-delta',
  'ungrounded delta': 'ungrounded-delta',
};

/** Arrangements in which every line stands at U/sqrt(3) to earth: what slash-rated devices and filters of drives want. */
const evenToEarth: readonly Earthing[] = ['tn-s', 'tn-c-s', 'tt', 'grounded-wye'];

const earthingAnswer = (c: Calculation): Answer => {
  const given = c.neededWord(`${c.floorPath}/power/earthing`);
  const arrangement = given === undefined ? undefined : arrangements[given.value];
  if (given === undefined) return { verdict: 'unknown' };
  const have = given.value;
  if (arrangement === undefined) {
    c.miss(`${c.floorPath}/power/earthing`);
    return { verdict: 'unknown', said: { have } };
  }
  c.run(earthingSheet, {
    arrangement: { value: arrangement, from: given.from },
    voltage: c.needed(`${c.floorPath}/power/voltage`, 'voltage'),
  });
  const drives = (c.book.line?.drives ?? []).some((drive) => drive.inverter === true);
  const even = evenToEarth.includes(arrangement);
  if (!even) c.note('EARTHING_UNEVEN');
  if (drives) {
    const device = `${c.floorPath}/power/protection/residualCurrent`;
    if (c.number(device, 'current') !== undefined) c.note('EARTHING_DRIVE_DEVICE');
    else if (arrangement === 'tt') c.note('EARTHING_DRIVE_LEAKAGE');
    // taken as none, and asked for
    else c.assume(device);
  }
  return { verdict: even ? 'carries' : 'short', said: { have } };
};

/** The largest device that the rule set lets protect the feeder. */
const mostDevice = (c: Calculation): Known | undefined => {
  const rules = rulesOf(c);
  if (rules === undefined) return undefined;
  // a transformer between them has rules of its own, which are worked out as a check aid
  return rules === 'us' && c.book.floors![c.floor]!.power?.stepTransformer === undefined
    ? machineSupplyUs(c)?.deviceRating
    : feederAllowed(c);
};

/** Standard devices of the rule set on the side that helps, the nearest first. */
const deviceLever = (
  c: Calculation,
  helps: (rating: number, now: number) => boolean,
): readonly UtilityLever[] =>
  quantityLever(c.book, {
    id: 'protectionRating',
    path: `${c.floorPath}/power/protection/rating`,
    kind: 'current',
    numbers: (now) => {
      const rules = rulesOf(c);
      if (rules === undefined) return [];
      return standardRatings[rules === 'us' ? 'us-breaker' : 'iec']
        .filter((rating) => helps(rating, now))
        .toSorted((a, b) => Math.abs(a - now) - Math.abs(b - now));
    },
  });

/** Short-circuit ratings that panels are marked with, kA; common practice. */
const panelRatings = [5, 6, 10, 14, 15, 18, 22, 25, 30, 35, 42, 50, 65, 80, 100, 150, 200];

/** A transformer of its own gives the line a star point that may be earthed. */
const earthingLever = (c: Calculation): readonly UtilityLever[] => {
  const arrangement = rulesOf(c) === 'us' ? 'solidly grounded wye' : 'TN-S';
  return wordLever('earthing', [`${c.floorPath}/power/earthing`], arrangement, arrangement);
};

/** What the line asks of the power of a floor. */
export const powerNeeds = (book: Book, floor: number): readonly Need[] => {
  const { drives = [], heaters = [], loads = [], tieIns = [] } = book.line ?? {};
  if (drives.length + heaters.length + loads.length === 0) return [];
  const tieIn = tieIns.find((each) => each.kind === 'power')?.tag;
  const common = { utility: 'power', tieIn } as const;
  const stepped = book.floors?.[floor]?.power?.stepTransformer !== undefined;
  return [
    {
      ...common,
      question: 'supplyVoltage',
      sense: 'least',
      kind: 'ratio',
      answer: voltageAnswer,
      levers: (c) => [...sizeLevers(c), ...stepTransformerLever(c)],
    },
    {
      ...common,
      question: 'feederAmpacity',
      sense: 'least',
      kind: 'current',
      answer: (c) => ({ demand: feederDemand(c), have: feederAllowed(c) }),
      levers: sizeLevers,
    },
    {
      ...common,
      question: 'feederDrop',
      sense: 'most',
      kind: 'ratio',
      answer: (c) => ({
        demand: c.numberOr('/agreement/voltageDrop', 'ratio', usualDrop),
        have: runningDrop(c)?.share,
      }),
      levers: sizeLevers,
    },
    {
      ...common,
      question: 'startingDrop',
      sense: 'most',
      kind: 'ratio',
      answer: (c) => ({
        demand: c.numberOr('/agreement/startingDrop', 'ratio', usualStartingDrop),
        have: startingDrop(c)?.share,
      }),
      levers: sizeLevers,
    },
    {
      ...common,
      question: 'protectionCarries',
      sense: 'least',
      kind: 'current',
      answer: (c) => ({
        demand: feederRunning(c),
        have: c.needed(`${c.floorPath}/power/protection/rating`, 'current'),
      }),
      levers: (c) => deviceLever(c, (rating, now) => rating > now),
    },
    {
      ...common,
      question: 'protectionProtects',
      sense: 'most',
      kind: 'current',
      answer: (c) => ({
        demand: mostDevice(c),
        have: c.needed(`${c.floorPath}/power/protection/rating`, 'current'),
      }),
      levers: (c) => [...sizeLevers(c), ...deviceLever(c, (rating, now) => rating < now)],
    },
    {
      ...common,
      question: 'faultCurrent',
      sense: 'most',
      kind: 'current',
      answer: (c) => ({
        demand: c.needed(`${c.floorPath}/power/panelRating`, 'current'),
        have: faultWithMotors(c),
      }),
      levers: (c) =>
        quantityLever(c.book, {
          id: 'panelRating',
          path: `${c.floorPath}/power/panelRating`,
          kind: 'current',
          numbers: (now, unit) =>
            panelRatings
              .map((ka) => (unit === 'kA' ? ka : 1000 * ka))
              .filter((rating) => rating > now * 1.001),
        }),
    },
    ...(stepped ? [stepTransformerNeed(tieIn)] : []),
    {
      ...common,
      question: 'voltageUnbalance',
      sense: 'most',
      kind: 'ratio',
      answer: unbalanceAnswer,
      levers: balanceLever,
    },
    {
      ...common,
      question: 'earthing',
      sense: 'least',
      kind: 'count',
      answer: earthingAnswer,
      levers: earthingLever,
    },
    ...motorNeeds(book, tieIn),
  ];
};
