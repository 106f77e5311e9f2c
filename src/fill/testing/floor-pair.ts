/**
 * Two floors with a known truth, and bottles filled on the first of them.
 *
 * The flows of the truth come from the hydraulics that the estimator uses too; noise, pulse phase, drip, spread, and what
 * is told to the tool and what is kept from it are made here. That those flows are right is held by tests/physics.
 */
import { fillRow } from '../../hydraulics/fill-row.ts';
import { manifoldBalance } from '../../hydraulics/manifold-balance.ts';
import { runInertia } from '../../hydraulics/run-inertia.ts';
import { startStored } from '../../hydraulics/stored.ts';
import type { FillSystem, Lane, Source } from '../../hydraulics/system.ts';
import type { Allowance } from '../allowances.ts';
import type { FillTrial } from '../trial.ts';
import type { SupplyUnknown, UncertainFloor } from '../uncertain-floor.ts';
import type { Random } from './random.ts';

export type SourceKind = 'gravity' | 'main' | 'pumped';

export interface PairOptions {
  readonly source: SourceKind;
  readonly lanes: number;
  /** Bottles of each lane at each of the two presets. */
  readonly bottles: number;
}

export interface FloorPair {
  readonly here: UncertainFloor;
  readonly there: UncertainFloor;
  readonly trueHere: FillSystem;
  readonly trueThere: FillSystem;
  readonly trials: readonly FillTrial[];
  readonly presets: readonly number[];
  /** Spread of single bottles about their mean, m3, and of a reading of the stopwatch, s. */
  readonly ownSpread: number;
  readonly weighing: number;
  readonly watch: number;
  readonly level: number;
  /** What the other floor changes of the lanes, where the truth is of another model, and what is allowed for it. */
  readonly productThere?: FillSystem;
  readonly allowances?: readonly Allowance[];
  /** How a row there truly fills, where it is not as the estimator's own hydraulics have it. */
  readonly truth?: (system: FillSystem) => TrueRow;
}

/** Mean volumes, m3, and times from the opening to fully shut, s. */
export interface TrueRow {
  readonly volumes: readonly number[];
  readonly times: readonly number[];
}

const still = { area: Number.POSITIVE_INFINITY, usable: Number.POSITIVE_INFINITY, makeUp: 0 };

const sourceOf = (kind: SourceKind, rich: boolean, random: Random): Source => {
  const { uniform } = random;
  if (kind === 'gravity') return { kind, surface: rich ? uniform(3, 6) : uniform(1.6, 2.6), tank: still };
  if (kind === 'main') {
    const pressure = rich ? uniform(2e5, 4e5) : uniform(0.4e5, 1e5);
    return {
      kind,
      static: pressure,
      residual: pressure * uniform(0.6, 0.85),
      testFlow: rich ? 1.5e-3 : 7e-4,
      exponent: 1.85,
      height: 0.5,
    };
  }
  const head = rich ? uniform(14, 30) : uniform(4, 8);
  const run = (rich ? 3e-3 : 1.5e-3) * uniform(0.9, 1.3);
  return {
    kind,
    curve: { shutOffHead: head, factor: head / run ** 2, exponent: 2, fitted: 'exact' } as never,
    speedRatio: 1,
    suction: 0.5,
    height: 0.3,
    tank: still,
    regulator: Number.POSITIVE_INFINITY,
    ambient: 101_325,
  };
};

/** A share of the head or pressure, one standard deviation. */
const movedSource = (source: Source, by: number): Source => {
  if (source.kind === 'gravity') return { ...source, surface: source.surface + by };
  if (source.kind === 'main') {
    return { ...source, static: source.static * (1 + by), residual: source.residual * (1 + by) };
  }
  if (source.kind === 'pumped') {
    const { curve } = source;
    return { ...source, curve: { ...curve, shutOffHead: curve.shutOffHead * (1 + by) } };
  }
  return source;
};

const supplyUnknown = (kind: SourceKind, spread: number): SupplyUnknown => ({
  place: kind,
  moved: (system, deviations) => ({
    ...system,
    source: movedSource(system.source, spread * deviations),
  }),
});

const floorOf = (kind: SourceKind, rich: boolean, lanes: readonly Lane[], random: Random): FillSystem => {
  const { uniform } = random;
  return {
    liquid: { density: 998.2, viscosity: 1.002e-3 },
    source: sourceOf(kind, rich, random),
    run: [
      {
        kind: 'pipe',
        bore: rich ? 0.041 : 0.032,
        length: uniform(4, rich ? 12 : 10),
        roughness: 1.5e-6,
        kSum: uniform(2, 8),
      },
    ],
    manifold: 1,
    lanes: lanes.map((lane) => ({ ...lane, outlet: 0.9 })),
  };
};

export const floorPair = (
  random: Random,
  { source, lanes: count, bottles }: PairOptions,
  rowOf = fillRow,
): FloorPair => {
  const { uniform, normal, whole } = random;
  const level = uniform(0.5e-3, 1.5e-3);
  const pulses = uniform(0.8e6, 2.5e6);
  const kv = uniform(0.7, 1.2);
  const delay = uniform(0.03, 0.1);
  const closing = uniform(0.05, 0.15);
  const drip = uniform(0, 2e-6);
  const free = uniform(0, 1) < 0.5;
  const book = Array.from(
    { length: count },
    (_, i): Lane => ({
      tag: `-Y${i + 1}`,
      kv,
      kvSlow: kv,
      pulses,
      preset: Math.round(0.98 * level * pulses),
      changeOver: Number.POSITIVE_INFINITY,
      delay,
      closing,
      afterDrip: drip,
      phase: free ? 0.5 / pulses : 0,
      outlet: 0.9,
    }),
  );
  const truth = book.map((lane): Lane => {
    const real = lane.kv * Math.exp(0.08 * normal());
    const factor = lane.pulses * (1 + 0.015 * normal());
    const slow = Math.exp(0.3 * normal());
    return {
      ...lane,
      kv: real,
      kvSlow: real,
      pulses: factor,
      delay: lane.delay * slow,
      closing: lane.closing * slow * Math.exp(0.15 * normal()),
      afterDrip: Math.max(0, lane.afterDrip + (5e-8 + 0.2 * lane.afterDrip) * normal()),
      phase: free ? 0.5 / factor : 0,
    };
  });
  const kinds: readonly SourceKind[] = ['gravity', 'main', 'pumped'];
  const thereKind = kinds[whole(0, 2)]!;
  const here = floorOf(source, false, book, random);
  const there = floorOf(thereKind, true, book, random);
  const width = (kind: SourceKind): number => (kind === 'gravity' ? 0.02 : 0.015);
  const [hereUnknown, thereUnknown] = [
    supplyUnknown(source, width(source)),
    supplyUnknown(thereKind, width(thereKind)),
  ];
  const trueHere = { ...hereUnknown.moved(here, normal()), lanes: truth };
  const trueThere = { ...thereUnknown.moved(there, normal()), lanes: truth };
  const ownSpread = level * uniform(5e-4, 2e-3);
  const weighing = uniform(1e-7, 5e-7);
  const watch = uniform(0.05, 0.15);
  const trials: FillTrial[] = [];
  for (const share of [0.5, 0.95]) {
    const preset = Math.round(share * level * pulses);
    const system = { ...trueHere, lanes: truth.map((lane) => ({ ...lane, preset, changeOver: preset })) };
    const lag = Math.LN2 * runInertia(system, manifoldBalance(system).flow).timeConstant;
    for (let bottle = 0; bottle < bottles; bottle++) {
      // each bottle of the row catches its meter in another phase
      const phased = {
        ...system,
        lanes: system.lanes.map((lane) => (free ? { ...lane, phase: uniform(0, 1) / lane.pulses } : lane)),
      };
      const row = rowOf(phased, startStored(phased.source));
      if ('stuck' in row) throw new Error('stuck');
      row.lanes.forEach((lane, i) => {
        trials.push({
          lane: truth[i]!.tag,
          preset,
          volume: lane.volume + ownSpread * normal() + weighing * normal(),
          volumeDeviation: weighing,
          time: lane.fillTime + lag + watch * normal(),
          timeDeviation: watch,
          overflow: 'none',
          row: `${share} ${bottle}`,
          lanesOpen: count,
        });
      });
    }
  }
  return {
    here: { system: here, unknowns: [hereUnknown] },
    there: { system: there, unknowns: [thereUnknown] },
    trueHere,
    trueThere,
    trials,
    presets: book.map(({ preset }) => preset),
    ownSpread,
    weighing,
    watch,
    level,
  };
};

/** Mean volumes and times of the truth with these counts. */
export const trueRow = (
  system: FillSystem,
  presets: readonly number[],
  truth?: FloorPair['truth'],
): TrueRow => {
  const set = {
    ...system,
    lanes: system.lanes.map((lane, i) => ({ ...lane, preset: presets[i]!, changeOver: presets[i]! })),
  };
  if (truth !== undefined) return truth(set);
  const lag = Math.LN2 * runInertia(set, manifoldBalance(set).flow).timeConstant;
  const row = fillRow(set, startStored(set.source));
  if ('stuck' in row) throw new Error('stuck');
  return {
    volumes: row.lanes.map(({ volume }) => volume),
    times: row.lanes.map(({ fillTime }) => fillTime + lag),
  };
};
