import type { Book } from '../../../book/index.ts';
import type { Calculation } from '../calculation.ts';
import type { Need } from '../need.ts';
import { quantityLever, rising, upTo } from '../steps.ts';
import { bathLoad } from './bath-load.ts';
import { bottleTemperatureLevers, fillStepLevers, zoneStepLevers } from './bottle-levers.ts';
import { fillStep, heatLimited, temperatureAnswer, zoneStep } from './bottle-limits.ts';
import { heatUpAnswer } from './heat-up.ts';
import { electricHere, heatersOf, heatersOfZone, zonePower } from './heaters-of.ts';
import { heatedZones, heatingWater, loadBy, steamFlow } from './site-heat.ts';
import { washNeeds } from './wash-needs.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

const tenthOfBar = 1e4;
/** Voltages for which heating elements are made, common practice. */
const elementVoltages = [208, 230, 240, 277, 380, 400, 415, 440, 460, 480, 575, 600, 690];

/** Highest voltage at an element, over its plate: a network may lie a tenth high; common practice. */
const mostVoltage = 1.1;

const heaterLever = (at: ZoneAt) => (c: Calculation) =>
  heatersOfZone(c.book, at.zone.tag).flatMap(({ path }) =>
    quantityLever(c.book, { id: 'heaterPower', path: `${path}/power`, kind: 'power', numbers: upTo(40) }),
  );

const zoneNeeds = (book: Book, at: ZoneAt, tieIn: string | undefined): readonly Need[] => {
  const common = { utility: 'heat', of: at.zone.tag, tieIn } as const;
  return [
    {
      ...common,
      question: 'washHeat',
      sense: 'least',
      kind: 'power',
      answer: (c) => ({ demand: bathLoad(c, at)?.total, have: zonePower(c, at.zone.tag) }),
      levers: heaterLever(at),
    },
    ...(book.agreement?.heatUp === undefined
      ? []
      : [
          {
            ...common,
            question: 'heatUp',
            sense: 'most',
            kind: 'time',
            answer: (c) => heatUpAnswer(c, at),
            levers: heaterLever(at),
          } satisfies Need,
        ]),
  ];
};

const steamNeeds = (tieIn: string | undefined): readonly Need[] => [
  {
    question: 'steamFlow',
    utility: 'heat',
    tieIn,
    sense: 'least',
    kind: 'massFlow',
    answer: (c) => ({
      demand: steamFlow(c),
      have: c.needed(`${c.floorPath}/heat/steam/flow`, 'massFlow'),
    }),
    levers: (c) =>
      quantityLever(c.book, {
        id: 'steamFlow',
        path: `${c.floorPath}/heat/steam/flow`,
        kind: 'massFlow',
        numbers: upTo(40),
      }),
  },
  {
    question: 'steamPressure',
    utility: 'heat',
    tieIn,
    sense: 'least',
    kind: 'gaugePressure',
    answer: (c) => {
      const point = (c.book.line?.tieIns ?? []).findIndex((each) => each.kind === 'steam');
      return {
        demand: c.needed(`/line/tieIns/${Math.max(0, point)}/pressure`, 'gaugePressure'),
        have: c.needed(`${c.floorPath}/heat/steam/pressure`, 'gaugePressure'),
      };
    },
    levers: (c) =>
      quantityLever(c.book, {
        id: 'steamPressure',
        path: `${c.floorPath}/heat/steam/pressure`,
        kind: 'gaugePressure',
        numbers: rising('gaugePressure', tenthOfBar, 100),
      }),
  },
];

const hotWaterNeeds = (tieIn: string | undefined): readonly Need[] => [
  {
    question: 'heatingWaterFlow',
    utility: 'heat',
    tieIn,
    sense: 'least',
    kind: 'volumeFlow',
    answer: (c) => ({
      demand: heatingWater(c)?.flow,
      have: c.needed(`${c.floorPath}/heat/hotWater/flow`, 'volumeFlow'),
    }),
    levers: (c) =>
      quantityLever(c.book, {
        id: 'heatingWaterFlow',
        path: `${c.floorPath}/heat/hotWater/flow`,
        kind: 'volumeFlow',
        numbers: upTo(40),
      }),
  },
];

/** What the line asks of heat, and what washing must reach. */
export const heatNeeds = (book: Book, floor: number): readonly Need[] => {
  const zones = zonesOf(book);
  const tieInOf = (kind: string) => (book.line?.tieIns ?? []).find((each) => each.kind === kind)?.tag;
  const kinds = new Set(heatersOf(book).map(({ kind }) => kind));
  const tieInOfZone = (at: ZoneAt) => {
    const [first] = heatersOfZone(book, at.zone.tag);
    return tieInOf(first?.kind === 'steam' ? 'steam' : first?.kind === 'gas' ? 'gas' : 'power');
  };
  const warm = zones.filter(({ zone }) => zone.temperature !== undefined);
  const glass = (book.line?.formats ?? []).some(
    ({ material, thermalStep }) => material === 'glass' || thermalStep !== undefined,
  );
  const fill = (book.line?.stations ?? []).find((station) => station.kind === 'fill');
  const stepped = {
    utility: 'heat',
    question: 'thermalStep',
    sense: 'most',
    kind: 'temperatureDifference',
  } as const;
  return [
    ...heatedZones({ book }).flatMap((at) => zoneNeeds(book, at, tieInOfZone(at))),
    ...(book.floors?.[floor]?.heat?.power === undefined || heatedZones({ book }).length === 0
      ? []
      : [
          {
            question: 'heatPower',
            utility: 'heat',
            sense: 'least',
            kind: 'power',
            answer: (c) => ({
              demand: loadBy(c),
              have: c.needed(`${c.floorPath}/heat/power`, 'power'),
            }),
            levers: (c) =>
              quantityLever(c.book, {
                id: 'heatPower',
                path: `${c.floorPath}/heat/power`,
                kind: 'power',
                numbers: upTo(40),
              }),
          } satisfies Need,
        ]),
    ...heatersOf(book).flatMap((at): Need[] =>
      at.kind === 'electric' && at.heater.voltage !== undefined
        ? [
            {
              question: 'heaterVoltage',
              utility: 'heat',
              of: at.heater.tag,
              tieIn: tieInOf('power'),
              sense: 'most',
              kind: 'ratio',
              answer: (c) => ({
                demand: { value: mostVoltage, from: { path: `${at.path}/voltage`, assumed: true } },
                have: electricHere(c, at)?.elementVoltage,
              }),
              levers: (c) =>
                quantityLever(c.book, {
                  id: 'heaterVoltage',
                  path: `${at.path}/voltage`,
                  kind: 'voltage',
                  numbers: (now) => elementVoltages.filter((volts) => volts > now * 1.001),
                }),
            },
          ]
        : [],
    ),
    ...(kinds.has('steam') ? steamNeeds(tieInOf('steam')) : []),
    ...(kinds.has('hot water') ? hotWaterNeeds(tieInOf('hot water')) : []),
    ...(glass
      ? [
          ...warm.map(
            (at): Need => ({
              ...stepped,
              of: at.zone.tag,
              answer: (c) => zoneStep(c, at),
              levers: (c) => zoneStepLevers(c, at),
            }),
          ),
          ...(fill === undefined || warm.length === 0
            ? []
            : [{ ...stepped, of: fill.tag, answer: fillStep, levers: fillStepLevers } satisfies Need]),
        ]
      : []),
    ...(heatLimited(book) && warm.length > 0
      ? [
          {
            question: 'bottleTemperature',
            utility: 'heat',
            sense: 'most',
            kind: 'temperature',
            answer: temperatureAnswer,
            levers: bottleTemperatureLevers,
          } satisfies Need,
        ]
      : []),
    ...washNeeds(book),
  ];
};
