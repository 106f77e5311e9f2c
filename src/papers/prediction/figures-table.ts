import type { FloorAssessment, LaneFigures } from '../../floor/assessment.ts';
import type { Kind } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import type { ShownFloor } from './spine.ts';

export interface FigureCell {
  readonly text: string;
  readonly interval?: string;
  readonly assumed: boolean;
  readonly working: Marks;
}

/** Figures that no finding shows already, a row each, a cell for each floor. */
export interface FiguresTable {
  readonly floors: readonly { readonly name: string; readonly hue: number }[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly (FigureCell | null)[] }[];
}

export interface LanesTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly workings: Marks }[];
}

const inFindings = (floors: readonly ShownFloor[]): ReadonlySet<string> =>
  new Set(
    floors.flatMap(({ floor }) => floor.findings.flatMap(({ id, demand, have }) => [id, demand.id, have.id])),
  );

const cellOf = (
  { floor, figures }: FloorAssessment,
  id: string,
  citations: Citations,
  paper: PaperWords,
): FigureCell | null => {
  const figure = figures[id];
  // what neither has a value nor misses one does not belong to a floor of this kind
  if (figure === undefined || (figure.value === undefined && figure.missing.length === 0)) return null;
  const interval = paper.interval(figure);
  return {
    text:
      figure.value === undefined
        ? paper.say('paper.unknown')
        : paper.quantity(figure.value, figure.kind).text,
    ...(interval === undefined ? {} : { interval }),
    assumed: figure.assumed.length > 0,
    working: citations.mark(floor, figure.working),
  };
};

export const figuresTable = (
  floors: readonly ShownFloor[],
  citations: Citations,
  paper: PaperWords,
): FiguresTable => {
  const shown = inFindings(floors);
  const ids = [...new Set(floors.flatMap(({ floor }) => Object.keys(floor.figures)))];
  return {
    floors: floors.map(({ floor, hue }) => ({ name: floor.name, hue })),
    rows: ids
      .filter((id) => !shown.has(id))
      .map((id) => ({
        name: paper.name(id),
        cells: floors.map(({ floor }) => cellOf(floor, id, citations, paper)),
      }))
      .filter(({ cells }) => cells.some((cell) => cell !== null)),
  };
};

const laneColumns: readonly (readonly [
  word: string,
  kind: Kind,
  of: (lane: LaneFigures) => number | undefined,
])[] = [
  ['preset', 'count', ({ preset }) => preset],
  ['presetForLevel', 'count', ({ presetForLevel }) => presetForLevel],
  ['flow', 'volumeFlow', ({ flowAllOpen }) => flowAllOpen],
  ['fillTime', 'time', ({ fillTime }) => fillTime],
  ['volume', 'volume', ({ volume }) => volume],
  ['overflow', 'volume', ({ overflow }) => overflow],
  ['shortBy', 'volume', ({ shortBy }) => shortBy],
];

export const lanesTable = (
  { floor, name, lanes }: FloorAssessment,
  citations: Citations,
  paper: PaperWords,
): LanesTable => ({
  title: paper.say('prediction.lanes.of', { floor: name }),
  columns: [
    paper.say('prediction.lane'),
    ...laneColumns.map(([word]) => paper.say(`prediction.${word}`)),
    paper.say('prediction.lane.workings'),
  ],
  rows: lanes.map((lane) => ({
    cells: [
      lane.lane,
      ...laneColumns.map(([word, kind, of]) => {
        const value = of(lane);
        return value === undefined || (word === 'shortBy' && value === 0)
          ? '–'
          : paper.quantity(value, kind).text;
      }),
    ],
    workings: citations.mark(floor, lane.workings.flow, lane.workings.fill, lane.workings.dose),
  })),
});
