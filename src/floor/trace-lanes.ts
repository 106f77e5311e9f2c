import type { RowFill } from '../hydraulics/filled-row.ts';
import { fillByStepsSheet } from '../sheets/water/fill-by-steps.ts';
import { laneDoseSheet } from '../sheets/water/lane-dose.ts';
import { laneFlowSheet } from '../sheets/water/lane-flow.ts';
import { manifoldFlowSheet } from '../sheets/water/manifold-flow.ts';
import { meanOverflowSheet } from '../sheets/water/mean-overflow.ts';
import { nozzleVelocitySheet } from '../sheets/water/nozzle-velocity.ts';
import { tankLevelSheet } from '../sheets/water/tank-level.ts';
import type { FloorInputs } from './read-floor.ts';
import type { FillSolution } from './solve-floor.ts';
import { at, outOf, type SupplyTrace } from './trace-supply.ts';
import type { Given, Tracer } from './tracer.ts';

export interface LaneTrace {
  readonly flow?: number;
  readonly fill?: number;
  readonly dose?: number;
  readonly jet?: number;
}

/** Mean flows of one lane between the moments of its row, up to its own count. */
const stepsOf = (row: RowFill, lane: number): { durations: number[]; flows: number[] } => {
  const durations: number[] = [];
  const flows: number[] = [];
  const end = row.lanes[lane]!.countTime;
  for (let m = 1; m < row.moments.length; m++) {
    const before = row.moments[m - 1]!;
    const after = row.moments[m]!;
    const duration = after.time - before.time;
    if (before.time >= end || !(duration > 0)) continue;
    durations.push(duration);
    flows.push((after.volumes[lane]! - before.volumes[lane]!) / duration);
  }
  return { durations, flows };
};

/** Workings of each lane: flow with all lanes open, its fill from event to event, what is in the bottle, its jet. */
export const traceLanes = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  supply: SupplyTrace,
): readonly LaneTrace[] => {
  const read = inputs.forFill;
  const { system, row } = fill;
  return inputs.model.lanes.map((lane, i): LaneTrace => {
    const result = row.lanes[i]!;
    const own = system.lanes[i]!;
    const flow = tracer.trace(laneFlowSheet, {
      kv: at(lane.kv, `${lane.path}/kv`),
      manifoldPressure: outOf(
        tracer,
        supply.manifoldPressure,
        manifoldOutput(system.source.kind),
        fill.pressure,
      ),
      manifoldHeight: at(system.manifold, `${inputs.stationPath}/manifoldHeight`, read),
      outletHeight: lane.bottomUp
        ? { value: Math.max(lane.outlet, lane.levelAt?.(0) ?? lane.outlet) }
        : at(lane.outlet, `${inputs.stationPath}/mouthHeight`, read),
      density: supply.density,
    });
    const delay = at(lane.delay, `${lane.path}/delay`, read);
    const closing = at(lane.closing, `${lane.path}/closing`, read);
    const drip = at(lane.afterDrip, `${lane.path}/afterDrip`);
    const atCount: Given = { value: result.flowAtEnd, from: { solved: 'row' } };
    const steps = stepsOf(row, i);
    const filled =
      steps.durations.length === 0
        ? undefined
        : tracer.trace(
            fillByStepsSheet,
            {
              durations: { value: steps.durations, from: { solved: 'row' } },
              flows: { value: steps.flows, from: { solved: 'row' } },
              flowAtCount: atCount,
              delay,
              closing,
              drip,
            },
            { output: 'fillTime', value: result.fillTime },
          );
    const dose = tracer.trace(
      laneDoseSheet,
      {
        pulses:
          lane.presetPath === undefined
            ? { value: own.preset, from: { solved: 'row' } }
            : at(own.preset, lane.presetPath),
        pulseDensity: at(lane.pulses, `${lane.path}/pulses`),
        flow: atCount,
        delay,
        closing,
        drip,
        phase: {
          value: lane.phase > 0 ? 'free-running' : 'reset',
          from: { path: `${lane.path}/meter/phase` },
        },
      },
      { output: 'volume', value: result.volume },
    );
    const jet =
      lane.nozzleBore === undefined
        ? undefined
        : tracer.trace(nozzleVelocitySheet, {
            flow: { value: Math.max(result.flowFree, result.flowCovered), from: { solved: 'row' } },
            bore: at(lane.nozzleBore, `${lane.path}/nozzleBore`),
          });
    return {
      ...(flow === undefined ? {} : { flow }),
      ...(filled === undefined ? {} : { fill: filled }),
      ...(dose === undefined ? {} : { dose }),
      ...(jet === undefined ? {} : { jet }),
    };
  });
};

const manifoldOutput = (kind: string): string => (kind === 'reading' ? 'pressure' : 'manifoldPressure');

/** Working of the flow that all lanes together take. */
export const traceManifoldFlow = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  supply: SupplyTrace,
): number | undefined => {
  const { lanes } = inputs.model;
  return tracer.trace(
    manifoldFlowSheet,
    {
      kv: { value: lanes.map((lane) => lane.kv), from: lanes.map((lane) => ({ path: `${lane.path}/kv` })) },
      outletHeight: {
        value: lanes.map((lane) => Math.max(lane.outlet, lane.levelAt?.(0) ?? lane.outlet)),
        from: lanes.map(() => ({ path: `${inputs.stationPath}/mouthHeight` })),
      },
      manifoldPressure: outOf(
        tracer,
        supply.manifoldPressure,
        manifoldOutput(fill.system.source.kind),
        fill.pressure,
      ),
      manifoldHeight: at(fill.system.manifold, `${inputs.stationPath}/manifoldHeight`, inputs.forFill),
      density: supply.density,
    },
    { output: 'flow', value: fill.flow },
  );
};

/** Working of what runs over the level. */
export const traceOverflow = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  lanes: readonly LaneTrace[],
): number | undefined => {
  const { level } = inputs.model;
  if (level === undefined) return undefined;
  return tracer.trace(meanOverflowSheet, {
    filled: {
      value: fill.row.lanes.map((lane) => lane.volume),
      from: lanes.map(({ dose }) => (dose === undefined ? undefined : { working: dose, output: 'volume' })),
    },
    level: at(level, `${inputs.formatPath}/level`),
  });
};

/** Working of the lowest surface of a tank that feeds by its height. */
export const traceTankLevel = (
  tracer: Tracer,
  inputs: FloorInputs,
  fill: FillSolution,
  drawnMost: number,
): number | undefined => {
  const { source } = fill.system;
  if (source.kind !== 'gravity' || !Number.isFinite(source.tank.area)) return undefined;
  const path = `${inputs.floorPath}/supply/source`;
  const outlet = inputs.forFill.number(`${path}/outlet`, 'length');
  return tracer.trace(tankLevelSheet, {
    surface: at(source.surface, `${path}/surface`),
    drawn: { value: drawnMost, from: { solved: 'hour' } },
    area: at(source.tank.area, `${path}/area`),
    outlet: outlet === undefined ? undefined : at(outlet, `${path}/outlet`),
  });
};
