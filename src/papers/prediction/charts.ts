import { fromSi, type Kind, si } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import type { ShownFloor } from './spine.ts';
import { type Tick, ticksOf } from './ticks.ts';

/** Curves with points on them, everything as shares of the frame. */
export interface XyChart {
  readonly title: string;
  readonly alt: string;
  readonly x: { readonly label: string; readonly ticks: readonly Tick[] };
  readonly y: { readonly label: string; readonly ticks: readonly Tick[] };
  readonly curves: readonly {
    readonly hue: number;
    readonly name: string;
    readonly points: readonly (readonly [number, number])[];
  }[];
  readonly dots: readonly {
    readonly hue: number;
    readonly x: number;
    readonly y: number;
    readonly text: string;
  }[];
  readonly rules: readonly { readonly at: number; readonly text: string }[];
  /** What the curves of each floor rest on. */
  readonly workings: readonly ChartWorkings[];
}

/** The marks of what is drawn of one floor. */
export interface ChartWorkings {
  readonly hue: number;
  readonly name: string;
  readonly marks: Marks;
}

/** The workings behind the figures of some findings, floor by floor; a floor without any is left out. */
export const chartWorkings = (
  floors: readonly ShownFloor[],
  ids: readonly string[],
  citations: Citations,
): readonly ChartWorkings[] =>
  floors
    .map(({ floor, hue }) => {
      const found = ids.flatMap((id) => [
        floor.findings.find((one) => one.id === id)?.have.working,
        floor.figures[id]?.working,
      ]);
      return { hue, name: floor.name, marks: citations.mark(floor.floor, ...found) };
    })
    .filter(({ marks }) => marks.length > 0);

/** The way from SI to the unit that the paper prints for a kind. */
export const printedIn = (kind: Kind, most: number, { quantity }: PaperWords) => {
  const { unit } = quantity(most, kind);
  const scale = (value: number): number => fromSi(si(kind, value), kind, unit);
  return { unit, scale };
};

const plain =
  (paper: PaperWords) =>
  (value: number): string =>
    paper.number(value, 4);

/** What the supply leaves at the manifold against flow; beyond half again the highest flow it says nothing here. */
const sourceChart = (
  floors: readonly ShownFloor[],
  citations: Citations,
  paper: PaperWords,
): XyChart | undefined => {
  const drawn = floors.filter(({ floor }) => floor.curve.supply.length > 1 && floor.curve.points.length > 0);
  if (drawn.length === 0) return undefined;
  const mostFlow =
    1.25 * Math.max(...drawn.flatMap(({ floor }) => floor.curve.points.map(({ flow }) => flow)));
  const seen = drawn.map(({ floor, hue }) => ({
    floor,
    hue,
    supply: floor.curve.supply.filter(({ flow, pressure }) => flow <= mostFlow && pressure >= 0),
  }));
  const mostPressure = Math.max(...seen.flatMap(({ supply }) => supply.map(({ pressure }) => pressure)));
  if (!(mostFlow > 0) || !(mostPressure > 0)) return undefined;
  const flow = printedIn('volumeFlow', mostFlow, paper);
  const pressure = printedIn('pressureDifference', mostPressure, paper);
  const x = (value: number): number => value / mostFlow;
  const y = (value: number): number => value / (1.05 * mostPressure);
  const said = seen.map(({ floor }) => {
    const last = floor.curve.points.at(-1);
    return paper.say('prediction.chart.source.floor', {
      floor: floor.name,
      flow: paper.quantity(last?.flow ?? 0, 'volumeFlow').text,
      pressure: paper.quantity(last?.pressure ?? 0, 'pressureDifference').text,
    });
  });
  return {
    title: paper.say('prediction.chart.source'),
    alt: paper.say('prediction.chart.source.alt', { floors: said.join(' ') }),
    x: {
      label: paper.say('prediction.chart.flow', { unit: flow.unit }),
      ticks: ticksOf(flow.scale(mostFlow), plain(paper)),
    },
    y: {
      label: paper.say('prediction.chart.pressure', { unit: pressure.unit }),
      ticks: ticksOf(pressure.scale(1.05 * mostPressure), plain(paper)),
    },
    curves: seen
      .filter(({ supply }) => supply.length > 1)
      .map(({ floor, hue, supply }) => ({
        hue,
        name: floor.name,
        points: supply.map((point) => [x(point.flow), y(point.pressure)] as const),
      })),
    dots: seen.flatMap(({ floor, hue }) =>
      floor.curve.points.map((point) => ({
        hue,
        x: x(point.flow),
        y: y(point.pressure),
        text: paper.say('prediction.chart.lanes', { n: point.lanesOpen }),
      })),
    ),
    rules: [],
    workings: chartWorkings(drawn, ['manifoldPressure'], citations),
  };
};

/** An open tank is drawn by its surface, a closed one by the volume left. */
const tankKind = ({ floor }: ShownFloor): 'length' | 'volume' =>
  floor.findings.some(({ id }) => id === 'tankVolume') ? 'volume' : 'length';

const tankChart = (
  all: readonly ShownFloor[],
  kind: 'length' | 'volume',
  citations: Citations,
  paper: PaperWords,
): XyChart | undefined => {
  const drawn = all.filter((one) => one.floor.tank.length > 1 && tankKind(one) === kind);
  const points = drawn.flatMap(({ floor }) => floor.tank);
  const mostTime = Math.max(0, ...points.map(({ time }) => time));
  const mostLevel = 1.05 * Math.max(0, ...points.map(({ level }) => level));
  if (!(mostTime > 0) || !(mostLevel > 0)) return undefined;
  const level = printedIn(kind, mostLevel, paper);
  const shown = (value: number | undefined): string => paper.quantity(value ?? 0, kind).text;
  return {
    title: paper.say('prediction.chart.tank'),
    alt: paper.say('prediction.chart.tank.alt', {
      floors: drawn
        .map(({ floor }) =>
          paper.say('prediction.chart.tank.floor', {
            floor: floor.name,
            first: shown(floor.tank[0]?.level),
            last: shown(floor.tank.at(-1)?.level),
          }),
        )
        .join(' '),
    }),
    x: { label: paper.say('prediction.chart.minutes'), ticks: ticksOf(mostTime / 60, plain(paper)) },
    y: {
      label: paper.say(`prediction.chart.tank.${kind}`, { unit: level.unit }),
      ticks: ticksOf(level.scale(mostLevel), plain(paper)),
    },
    curves: drawn.map(({ floor, hue }) => ({
      hue,
      name: floor.name,
      points: floor.tank.map(({ time, level: at }) => [time / mostTime, at / mostLevel] as const),
    })),
    dots: [],
    rules: drawn.flatMap(({ floor }) => {
      const outlet = kind === 'length' ? floor.figures.tankOutlet?.value : undefined;
      if (outlet === undefined || outlet > mostLevel) return [];
      return [
        { at: outlet / mostLevel, text: paper.say('prediction.chart.tank.outlet', { floor: floor.name }) },
      ];
    }),
    workings: chartWorkings(drawn, ['tankLevel', 'tankVolume'], citations),
  };
};

export const chartsOf = (
  floors: readonly ShownFloor[],
  citations: Citations,
  paper: PaperWords,
): readonly XyChart[] =>
  [
    sourceChart(floors, citations, paper),
    tankChart(floors, 'length', citations, paper),
    tankChart(floors, 'volume', citations, paper),
  ].filter((chart) => chart !== undefined);
