import type { FigureId, FigureValues } from './figure-values.ts';
import type { FloorInputs } from './read-floor.ts';

/** Which account of the book a figure rests on. */
export type Ground = 'fill' | 'line' | 'both' | 'agreement';

/** What the figures rest on, for what was assumed and what is missing behind them. */
export const groundOf: Record<FigureId, Ground> = {
  agreedRate: 'agreement',
  runningRate: 'both',
  hourRate: 'both',
  worstRow: 'both',
  shiftOutput: 'both',
  cycle: 'both',
  washerIndex: 'line',
  fillStationTime: 'both',
  fillTime: 'fill',
  fillTimeLeft: 'both',
  lagTime: 'fill',
  manifoldPressure: 'fill',
  manifoldPressureNeeded: 'both',
  manifoldFlow: 'fill',
  runVelocity: 'fill',
  leastVolume: 'fill',
  level: 'fill',
  overflow: 'fill',
  jetSpeed: 'fill',
  jetAllowed: 'fill',
  surgePressure: 'fill',
  rating: 'fill',
  tankLow: 'both',
  tankOutlet: 'fill',
  tankLeft: 'both',
  tankEmpty: 'fill',
  runDryAfter: 'both',
  makeUp: 'fill',
  meanDraw: 'both',
  washerRate: 'line',
  closingRate: 'line',
  takeOffRate: 'line',
};

export interface FindingSpec {
  readonly id: string;
  readonly have: FigureId;
  readonly demand: FigureId;
  readonly sense: 'least' | 'most';
  /** The finding that decides the verdict where the gap of this one is the same question in other words. */
  readonly decidedBy?: string;
  readonly levers: readonly string[];
  /** Short whatever the gap: a tank that has run dry stands exactly at its outlet. */
  readonly fails?: (values: FigureValues) => boolean;
  /** Whether the question makes sense on this floor at all. */
  readonly asked: (inputs: FloorInputs, values: FigureValues) => boolean;
}

const always = (): boolean => true;
const supplyLevers = [
  'surface',
  'staticPressure',
  'regulator',
  'pumpFrequency',
  'bore',
  'pieceKv',
  'laneKv',
  'boosterPump',
] as const;
const sourceOf = ({ floor }: FloorInputs) => floor.supply?.source;

/** The findings of the main question, in the order in which they are read. */
export const findingSpecs: readonly FindingSpec[] = [
  {
    id: 'runningRate',
    have: 'runningRate',
    demand: 'agreedRate',
    sense: 'least',
    levers: [...supplyLevers, 'washerDwell', 'closingHeads'],
    asked: always,
  },
  {
    id: 'hourRate',
    have: 'hourRate',
    demand: 'agreedRate',
    sense: 'least',
    levers: [...supplyLevers, 'makeUp', 'tankArea', 'tankVolume', 'washerDwell', 'closingHeads'],
    asked: always,
  },
  {
    id: 'manifoldPressure',
    have: 'manifoldPressure',
    demand: 'manifoldPressureNeeded',
    sense: 'least',
    decidedBy: 'fillTime',
    levers: supplyLevers,
    asked: (inputs) => inputs.stationPath !== undefined,
  },
  {
    id: 'fillTime',
    have: 'fillTime',
    demand: 'fillTimeLeft',
    sense: 'most',
    levers: supplyLevers,
    asked: (inputs) => inputs.stationPath !== undefined,
  },
  {
    id: 'level',
    have: 'leastVolume',
    demand: 'level',
    sense: 'least',
    levers: ['presets'],
    asked: (inputs) => inputs.stationPath !== undefined,
  },
  {
    id: 'jetSpeed',
    have: 'jetSpeed',
    demand: 'jetAllowed',
    sense: 'most',
    levers: ['nozzleBore', 'surface', 'regulator', 'pumpFrequency'],
    asked: (inputs) => inputs.stationPath !== undefined,
  },
  {
    id: 'surge',
    have: 'surgePressure',
    demand: 'rating',
    sense: 'most',
    levers: ['closing', 'bore', 'regulator'],
    asked: (inputs) => inputs.stationPath !== undefined && sourceOf(inputs)?.kind !== 'reading',
  },
  {
    id: 'tankLevel',
    have: 'tankLow',
    demand: 'tankOutlet',
    sense: 'least',
    levers: ['makeUp', 'tankArea'],
    fails: (values) => values.runDryAfter !== undefined,
    asked: (inputs) => sourceOf(inputs)?.kind === 'gravity',
  },
  {
    id: 'tankVolume',
    have: 'tankLeft',
    demand: 'tankEmpty',
    sense: 'least',
    levers: ['makeUp', 'tankVolume'],
    fails: (values) => values.runDryAfter !== undefined,
    asked: (_, values) => values.tankLeft !== undefined,
  },
  {
    id: 'makeUp',
    have: 'makeUp',
    demand: 'meanDraw',
    sense: 'least',
    levers: ['makeUp'],
    asked: (inputs) => {
      const source = sourceOf(inputs);
      return source?.kind === 'gravity' || (source?.kind === 'pumped' && source.tank !== undefined);
    },
  },
  {
    id: 'washerRate',
    have: 'washerRate',
    demand: 'agreedRate',
    sense: 'least',
    levers: ['washerDwell'],
    asked: (inputs) => (inputs.forLine.book.line?.stations ?? []).some((s) => s.kind === 'washer'),
  },
  {
    id: 'closingRate',
    have: 'closingRate',
    demand: 'agreedRate',
    sense: 'least',
    levers: ['closingHeads'],
    asked: (inputs) => (inputs.forLine.book.line?.stations ?? []).some((s) => s.kind === 'closing'),
  },
  {
    id: 'takeOffRate',
    have: 'takeOffRate',
    demand: 'agreedRate',
    sense: 'least',
    levers: [],
    asked: (inputs) => (inputs.forLine.book.line?.stations ?? []).some((s) => s.kind === 'take-off'),
  },
];

/** Findings that want the hour walked. */
export const wantsHour = (id: string): boolean => ['hourRate', 'tankLevel', 'tankVolume'].includes(id);

/** How far a finding is on the good side. */
export const gapOf = (spec: FindingSpec, values: FigureValues): number | undefined => {
  const have = values[spec.have];
  const demand = values[spec.demand];
  if (have === undefined || demand === undefined) return undefined;
  return spec.sense === 'least' ? have - demand : demand - have;
};
