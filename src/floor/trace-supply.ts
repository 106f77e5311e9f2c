import type { PressureNeeded } from '../hydraulics/pressure-needed.ts';
import { stiffWaveSpeed } from '../hydraulics/run-surge.ts';
import type { Pipe, RunPiece } from '../hydraulics/system.ts';
import { inertiaLagSheet } from '../sheets/water/inertia-lag.ts';
import { liquidBetweenSheet } from '../sheets/water/liquid-between.ts';
import { mainSupplySheet } from '../sheets/water/main-supply.ts';
import { manifoldPressureSheet } from '../sheets/water/manifold-pressure.ts';
import { pumpedSupplySheet } from '../sheets/water/pumped-supply.ts';
import { readingCurveSheet } from '../sheets/water/reading-curve.ts';
import { readingPressure } from '../sheets/water/reading-supply.ts';
import { runLossSheet } from '../sheets/water/run-loss.ts';
import { surgeSheet } from '../sheets/water/surge.ts';
import { waterDensitySheet } from '../sheets/water/water-density.ts';
import { waterViscositySheet } from '../sheets/water/water-viscosity.ts';
import type { Origin } from './assessment.ts';
import type { BookReader } from './book-reader.ts';
import type { FloorInputs } from './read-floor.ts';
import type { FillSolution } from './solve-floor.ts';
import type { Given, Tracer } from './tracer.ts';

/** Workings of the supply, by what they are wanted for. */
export interface SupplyTrace {
  readonly density: Given;
  readonly viscosity: Given;
  readonly runLoss?: number;
  readonly manifoldPressure?: number;
  readonly lag?: number;
  readonly surge?: number;
}

export const at = (value: number, path: string, reader?: BookReader): Given => ({
  value,
  from: reader?.account.assumed.has(path) ? { path, assumed: true } : { path },
});
export const outOf = (tracer: Tracer, working: number | undefined, output: string, value: number): Given =>
  working === undefined
    ? { value }
    : { value: tracer.output(working, output) ?? value, from: { working, output } };

const traceLiquid = (tracer: Tracer, inputs: FloorInputs): { density: Given; viscosity: Given } => {
  const liquid = inputs.liquid!;
  const temperature = at(liquid.temperature, liquid.temperaturePath);
  if (liquid.properties === 'water') {
    const density = tracer.trace(waterDensitySheet, { temperature });
    const viscosity = tracer.trace(waterViscositySheet, { temperature });
    return {
      density: outOf(tracer, density, 'density', liquid.density),
      viscosity: outOf(tracer, viscosity, 'viscosity', liquid.viscosity),
    };
  }
  const [low, high] = liquid.points;
  const read = inputs.forFill;
  const point = (
    path: string | undefined,
    field: string,
    kind: 'temperature' | 'density' | 'dynamicViscosity',
  ) => {
    const value = path === undefined ? undefined : read.number(`${path}/${field}`, kind);
    return value === undefined ? undefined : at(value, `${path}/${field}`);
  };
  if (low !== undefined && high !== undefined) {
    const working = tracer.trace(liquidBetweenSheet, {
      temperature,
      lowTemperature: point(low, 'at', 'temperature'),
      highTemperature: point(high, 'at', 'temperature'),
      lowDensity: point(low, 'density', 'density'),
      highDensity: point(high, 'density', 'density'),
      lowViscosity: point(low, 'viscosity', 'dynamicViscosity'),
      highViscosity: point(high, 'viscosity', 'dynamicViscosity'),
    });
    return {
      density: outOf(tracer, working, 'density', liquid.density),
      viscosity: outOf(tracer, working, 'viscosity', liquid.viscosity),
    };
  }
  return {
    density: at(liquid.density, `${low}/density`),
    viscosity: at(liquid.viscosity, `${low}/viscosity`),
  };
};

/** Bore that stands for a piece without one where a list wants a number: the sheet does not use it there. */
const noBore = 1;

const traceRun = (
  tracer: Tracer,
  inputs: FloorInputs,
  run: readonly RunPiece[],
  flow: Given,
  density: Given,
  viscosity: Given,
): number | undefined => {
  if (run.length === 0) return undefined;
  const paths = inputs.supply!.runPaths;
  const pipe = (pick: (pipe: Pipe) => number, other: number): number[] =>
    run.map((piece) => (piece.kind === 'pipe' ? pick(piece) : other));
  const origins = (kind: RunPiece['kind'], field: string): (Origin | undefined)[] =>
    run.map((piece, i) => {
      if (piece.kind !== kind) return undefined;
      const path = `${paths[i]}/${field}`;
      return inputs.forFill.account.assumed.has(path) ? { path, assumed: true } : { path };
    });
  return tracer.trace(runLossSheet, {
    bore: { value: pipe((p) => p.bore, noBore), from: origins('pipe', 'bore') },
    length: { value: pipe((p) => p.length, 0), from: origins('pipe', 'length') },
    roughness: { value: pipe((p) => p.roughness, 0), from: origins('pipe', 'roughness') },
    fittings: { value: pipe((p) => p.kSum, 0), from: origins('pipe', 'fittings') },
    kv: {
      value: run.map((piece) => (piece.kind === 'valve' ? piece.kv : 0)),
      from: origins('valve', 'kv'),
    },
    constantLoss: {
      value: run.map((piece) => (piece.kind === 'constant' ? piece.loss : 0)),
      from: origins('constant', 'loss'),
    },
    flow,
    density,
    viscosity,
  });
};

interface SourceTrace {
  readonly pressure: Given;
  readonly height: Given;
}

const traceSource = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  flow: Given,
  density: Given,
): SourceTrace | undefined => {
  const { source } = fill.system;
  const path = `${inputs.floorPath}/supply/source`;
  const read = inputs.forFill;
  if (source.kind === 'gravity') {
    return { pressure: { value: 0 }, height: at(source.surface, `${path}/surface`) };
  }
  if (source.kind === 'main') {
    const working = tracer.trace(mainSupplySheet, {
      staticPressure: at(source.static, `${path}/static`),
      residualPressure: at(source.residual, `${path}/residual`),
      testFlow: at(source.testFlow, `${path}/testFlow`),
      exponent: at(source.exponent, `${path}/exponent`, read),
      flow,
    });
    return {
      pressure: outOf(tracer, working, 'pressure', 0),
      height: at(source.height, `${path}/height`, read),
    };
  }
  if (source.kind === 'pumped') {
    const given = inputs.floor.supply?.source;
    const points = given?.kind === 'pumped' ? (given.curve ?? []) : [];
    const curve = points.map((_, i) => `${path}/curve/${i}`);
    const held = Math.min(source.regulator, source.vessel?.cutIn ?? Number.POSITIVE_INFINITY);
    const holder =
      source.vessel !== undefined && held === source.vessel.cutIn ? 'vessel/cutIn' : 'regulator/set';
    const working = tracer.trace(pumpedSupplySheet, {
      flows: {
        value: curve.map((p) => read.number(`${p}/flow`, 'volumeFlow') ?? 0),
        from: curve.map((p) => ({ path: `${p}/flow` })),
      },
      heads: {
        value: curve.map((p) => read.number(`${p}/head`, 'length') ?? 0),
        from: curve.map((p) => ({ path: `${p}/head` })),
      },
      // the sheet wants frequencies; where the book has none the ratio alone counts
      ratedFrequency: { value: 50 },
      frequency: { value: 50 * source.speedRatio },
      suctionHeight: { value: source.suction - source.height, from: { path: `${path}/suctionSurface` } },
      regulatorPressure: Number.isFinite(held) ? at(held, `${path}/${holder}`) : { value: 0 },
      density,
      flow,
    });
    return {
      pressure: outOf(tracer, working, 'pressure', 0),
      height: at(source.height, `${path}/height`, read),
    };
  }
  return undefined;
};

/** Workings from the book's supply to the pressure at the manifold with all lanes open. */
export const traceSupply = (tracer: Tracer, inputs: FloorInputs, fill: FillSolution): SupplyTrace => {
  const { system } = fill;
  const { density, viscosity } = traceLiquid(tracer, inputs);
  const flow: Given = { value: fill.flow, from: { solved: 'balance' } };
  const path = `${inputs.floorPath}/supply/source`;
  const solved = { output: 'manifoldPressure', value: fill.pressure } as const;
  const common = { density, viscosity };
  if (system.source.kind === 'reading') {
    const source = inputs.floor.supply?.source;
    const readings = source?.kind === 'reading' ? (source.readings ?? []) : [];
    const curve = readings.flatMap((reading, i) => {
      const pressure = inputs.forFill.number(`${path}/readings/${i}/pressure`, 'gaugePressure');
      if (pressure === undefined) return [];
      const own = inputs.forFill.number(`${path}/readings/${i}/flow`, 'volumeFlow');
      return [{ i, pressure, flow: own ?? inputs.supply!.readingFlows[i] ?? 0, lanes: reading.lanesOpen }];
    });
    const working = tracer.trace(
      readingCurveSheet,
      {
        flows: {
          value: curve.map((each) => each.flow),
          from: curve.map((each) => ({ path: `${path}/readings/${each.i}/lanesOpen` })),
        },
        pressures: {
          value: curve.map((each) => each.pressure),
          from: curve.map((each) => ({ path: `${path}/readings/${each.i}/pressure` })),
        },
        flow,
      },
      { output: 'pressure', value: fill.pressure },
    );
    return { ...common, ...(working === undefined ? {} : { manifoldPressure: working }) };
  }
  const source = traceSource(tracer, inputs, fill, flow, density)!;
  const runLoss = traceRun(tracer, inputs, system.run, flow, density, viscosity);
  const manifoldPressure = tracer.trace(
    manifoldPressureSheet,
    {
      sourcePressure: source.pressure,
      sourceHeight: source.height,
      manifoldHeight: at(system.manifold, `${inputs.stationPath}/manifoldHeight`, inputs.forFill),
      runLoss: runLoss === undefined ? { value: 0 } : outOf(tracer, runLoss, 'loss', 0),
      density,
    },
    solved,
  );
  const pipes = system.run.flatMap((piece, i) =>
    piece.kind === 'pipe' ? [{ piece, path: inputs.supply!.runPaths[i] }] : [],
  );
  const lag =
    pipes.length === 0 || !(fill.inertia.head > 0)
      ? undefined
      : tracer.trace(
          inertiaLagSheet,
          {
            lengths: {
              value: pipes.map(({ piece }) => piece.length),
              from: pipes.map((pipe) => ({ path: `${pipe.path}/length` })),
            },
            bores: {
              value: pipes.map(({ piece }) => piece.bore),
              from: pipes.map((pipe) => ({ path: `${pipe.path}/bore` })),
            },
            flow,
            head: { value: fill.inertia.head, from: { solved: 'balance' } },
            time: { value: fill.row.fillTime, from: { solved: 'row' } },
          },
          { output: 'lostInAll', value: fill.lag },
        );
  const surge = tracer.trace(surgeSheet, {
    density,
    waveSpeed: { value: stiffWaveSpeed },
    length: { value: fill.surge.length },
    velocityChange: { value: fill.surge.velocity, from: { solved: 'row' } },
    closingTime: { value: fill.surge.closing },
    pressure: { value: fill.shutPressure, from: { solved: 'balance' } },
  });
  return {
    ...common,
    ...(runLoss === undefined ? {} : { runLoss }),
    ...(manifoldPressure === undefined ? {} : { manifoldPressure }),
    ...(lag === undefined ? {} : { lag }),
    ...(surge === undefined ? {} : { surge }),
  };
};

/** Working of the pressure that the agreed rate asks of the manifold: the supply as it is, raised by what is missing. */
export const tracePressureNeeded = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  { density, viscosity }: SupplyTrace,
  needed: PressureNeeded,
): number | undefined => {
  const { system } = fill;
  const flow: Given = { value: needed.flow, from: { solved: 'row' } };
  if (system.source.kind === 'reading') {
    const { curve } = system.source;
    // two points of the raised curve stand for all of it
    const pressures = [0, needed.flow].map((q) => readingPressure(curve, q) + needed.raise);
    return tracer.trace(
      readingCurveSheet,
      {
        flows: { value: [0, needed.flow] },
        pressures: { value: pressures, from: { solved: 'row' } },
        flow,
      },
      { output: 'pressure', value: needed.pressure },
    );
  }
  const source = traceSource(tracer, inputs, fill, flow, density)!;
  const runLoss = traceRun(tracer, inputs, system.run, flow, density, viscosity);
  return tracer.trace(
    manifoldPressureSheet,
    {
      sourcePressure: { value: Number(source.pressure.value) + needed.raise, from: { solved: 'row' } },
      sourceHeight: source.height,
      manifoldHeight: at(system.manifold, `${inputs.stationPath}/manifoldHeight`, inputs.forFill),
      runLoss: runLoss === undefined ? { value: 0 } : outOf(tracer, runLoss, 'loss', 0),
      density,
    },
    { output: 'manifoldPressure', value: needed.pressure },
  );
};
