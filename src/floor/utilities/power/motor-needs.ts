import type { Book } from '../../../book/index.ts';
import { overloadSettingSheet } from '../../../sheets/power/overload-setting.ts';
import { writtenAt, writtenPatch, writtenSi } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { cooler, downTo, falling, quantityLever, rising, upTo } from '../steps.ts';
import { motorHere, pumpLike } from './motor-here.ts';
import { plateHere, surroundingsShare } from './plate-here.ts';
import { pumpSuction } from './pump-suction.ts';
import { rulesOf } from './rule-set.ts';
import { stepTransformerLever } from './step-transformer.ts';
import { balanceLever, betweenLines, voltageUnbalance } from './voltage-unbalance.ts';

/** Motor ratings that are made, kW and hp; IEC 60072 and NEMA MG 1, from memory. */
const kilowatts = [0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55];
const horsepowers = [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100];

/** Unbalance at which NEMA MG 1 begins to derate. */
const unbalanceBorne = 0.01;

/** An impeller is turned down by no more than this share of its power. */
const mostTrimmed = 50;

/** An inverter gives the motor the frequency of its plate on every floor. */
const inverterLever = (c: Calculation, index: number): readonly UtilityLever[] => {
  const path = `/line/drives/${index}`;
  const frequency = c.number(`${path}/frequency`, 'frequency');
  if (frequency === undefined || c.book.line!.drives![index]!.inverter === true) return [];
  return [
    {
      id: 'inverter',
      path: `${path}/inverter`,
      kind: 'frequency',
      steps: () => [
        {
          patches: [{ path: `${path}/inverter`, value: true }],
          value: frequency.value,
          text: `${frequency.value} Hz`,
        },
      ],
    },
  ];
};

/** A relay that begins lower, set to the plate where the one that is there is set over it. */
const lowerRelayLever = (c: Calculation, drive: string): readonly UtilityLever[] => {
  const set = writtenAt(c.book, `${drive}/overload/set`, 'current');
  const plate = writtenAt(c.book, `${drive}/current`, 'current');
  const over =
    set !== undefined && plate !== undefined && writtenSi(set, set.number) > writtenSi(plate, plate.number);
  const toPlate = over ? [writtenPatch(c.book, { ...set, unit: plate.unit }, plate.number)] : [];
  return quantityLever(c.book, {
    id: 'overloadLeast',
    path: `${drive}/overload/least`,
    kind: 'current',
    numbers: downTo(20),
  }).map((lever) => ({
    ...lever,
    steps: () => lever.steps().map((step) => ({ ...step, patches: [...step.patches, ...toPlate] })),
  }));
};

/** A relay that reaches higher or begins lower, or the one that is there set lower. */
const overloadLevers = (c: Calculation, drive: string): readonly UtilityLever[] => [
  ...quantityLever(c.book, {
    id: 'overloadMost',
    path: `${drive}/overload/most`,
    kind: 'current',
    numbers: upTo(20),
  }),
  ...lowerRelayLever(c, drive),
  ...quantityLever(c.book, {
    id: 'overloadSet',
    path: `${drive}/overload/set`,
    kind: 'current',
    numbers: falling('current', 0.1, 200),
  }),
];

/** What takes from the plate here, taken away: each only where it does. */
const plateLevers = (c: Calculation, index: number): readonly UtilityLever[] => {
  const room = `${c.floorPath}/room`;
  const warmed = (surroundingsShare(c)?.value ?? 1) < 1;
  const cooled = warmed
    ? quantityLever(c.book, {
        id: 'roomCooled',
        path:
          c.number(`${room}/highest`, 'temperature') === undefined ? `${room}/ambient` : `${room}/highest`,
        kind: 'temperature',
        numbers: cooler,
      })
    : [];
  if (c.book.line!.drives![index]!.inverter === true) return cooled;
  const here = motorHere(c, index);
  const uneven = (voltageUnbalance(c)?.nema.value ?? 0) > unbalanceBorne;
  const weak = here !== undefined && here.speedRatio.value !== 1 && here.flux.value < 1;
  return [...cooled, ...(uneven ? balanceLever(c) : []), ...(weak ? stepTransformerLever(c) : [])];
};

const motorLevers =
  (index: number) =>
  (c: Calculation): readonly UtilityLever[] => {
    const path = `/line/drives/${index}`;
    const drive = c.book.line!.drives![index]!;
    return [
      ...inverterLever(c, index),
      ...plateLevers(c, index),
      ...quantityLever(c.book, {
        id: 'motorSize',
        path: `${path}/power`,
        kind: 'power',
        numbers: (now, unit) =>
          (unit === 'hp' ? horsepowers : kilowatts.map((kw) => (unit === 'W' ? 1000 * kw : kw))).filter(
            (size) => size > now * 1.001,
          ),
      }),
      ...(pumpLike(drive)
        ? quantityLever(c.book, {
            id: 'impeller',
            path: `${path}/shaftPower`,
            kind: 'power',
            numbers: (now) =>
              Array.from({ length: mostTrimmed }, (_, i) =>
                Number((now * (1 - 0.01 * (i + 1))).toPrecision(4)),
              ),
          })
        : []),
    ];
  };

/** No motor is to be run on a supply that is so uneven, whatever it gives: NEMA MG 1. */
const notToRun = (c: Calculation): boolean =>
  betweenLines(c) !== undefined && (voltageUnbalance(c)?.nema.value ?? 0) > 0.05;

/** Shaft power against what is left of the plate; what only a motor taken as fully loaded would pass is not known. */
const loadingAnswer = (c: Calculation, index: number): Answer => {
  const path = `/line/drives/${index}/shaftPower`;
  const demand = plateHere(c, index)?.share;
  const have = motorHere(c, index)?.loading;
  if (c.book.line!.drives![index]!.inverter !== true && notToRun(c))
    return { demand, have, verdict: 'short' };
  const passed = demand !== undefined && have !== undefined && have.value > demand.value * (1 + 1e-9);
  if (!passed || c.number(path, 'power') !== undefined) return { demand, have };
  c.miss(path);
  return { demand, have, verdict: 'unknown' };
};

/** What the supply does to each motor of the line. */
export const motorNeeds = (book: Book, tieIn: string | undefined): readonly Need[] => {
  const drives = book.line?.drives ?? [];
  const common = { utility: 'power', tieIn } as const;
  return drives.flatMap((drive, i): Need[] => [
    {
      ...common,
      question: 'motorLoading',
      of: drive.tag,
      sense: 'most',
      kind: 'ratio',
      answer: (c) => loadingAnswer(c, i),
      levers: motorLevers(i),
    },
    ...(drive.overload === undefined
      ? []
      : [
          {
            ...common,
            question: 'overloadRange',
            of: drive.tag,
            sense: 'least',
            kind: 'current',
            answer: (c) => {
              const rules = rulesOf(c);
              const current = c.needed(`/line/drives/${i}/current`, 'current');
              const mark = (drive.serviceFactor ?? 1) >= 1.15 ? 'service-factor-1.15-or-rise-40' : 'neither';
              const setting =
                rules === undefined
                  ? undefined
                  : c.run(overloadSettingSheet, {
                      current,
                      rule: { value: rules, from: { path: '/agreement/electrical/ruleSet' } },
                      mark: { value: mark, from: { path: `/line/drives/${i}/serviceFactor` } },
                    });
              // set higher than this, or unable to be set so low, it would let the motor burn
              const over = ['least', 'set'].some((field) => {
                const at = c.number(`/line/drives/${i}/overload/${field}`, 'current');
                return at !== undefined && setting !== undefined && at.value > setting.highest.value;
              });
              return {
                demand: setting?.rated,
                have: c.needed(`/line/drives/${i}/overload/most`, 'current'),
                ...(over ? { verdict: 'short' as const } : {}),
              };
            },
            levers: (c) => overloadLevers(c, `/line/drives/${i}`),
          } satisfies Need,
        ]),
    ...((drive.pump ?? []).some((point) => point.npsh !== undefined)
      ? [
          {
            ...common,
            question: 'pumpSuction',
            of: drive.tag,
            sense: 'least',
            kind: 'length',
            answer: (c) => pumpSuction(c, i, motorHere(c, i)?.speedRatio),
            levers: (c) => [
              ...inverterLever(c, i),
              ...quantityLever(c.book, {
                id: 'suction',
                path: `/line/drives/${i}/suction`,
                kind: 'length',
                numbers: rising('length', 0.1, 60),
              }),
            ],
          } satisfies Need,
        ]
      : []),
  ]);
};
