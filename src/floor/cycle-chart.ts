import { cycleBars } from '../line/cycle-bars.ts';
import type { CycleBar, Hold } from './assessment.ts';
import { slowestLane } from './figure-values.ts';
import type { FloorInputs } from './read-floor.ts';
import type { FloorSolution } from './solve-floor.ts';

/** Machines by the steps that only they do. */
const machineOf: Readonly<Record<string, string>> = {
  stroke: 'washer',
  dwell: 'washer',
  setUp: 'way',
  convey: 'way',
  travelIn: 'fill',
  lift: 'fill',
  lag: 'fill',
  fill: 'fill',
  drip: 'fill',
  lower: 'fill',
  clearOut: 'fill',
  cap: 'closing',
  takeOff: 'take-off',
};

/** What sets the pace, as the chain of steps that comes back to where it began. */
export const holdOf = (inputs: FloorInputs, solution: FloorSolution): Hold | undefined => {
  const { fill, line } = solution;
  if (line === undefined) return undefined;
  const chain = line.cycle.loop.flatMap((arc) => {
    const steps = arc.steps
      .filter((step) => step.seconds > 0)
      .map((step) => ({
        ...step,
        ...(step.step === 'fill' && fill !== undefined ? { lane: slowestLane(fill).lane } : {}),
      }));
    if (arc.because === undefined) return steps;
    const from = line.graph.events[arc.from]!.replace(/ \d+$/, '');
    return [
      ...steps,
      { step: from, station: inputs.model.times.fill?.station ?? '', seconds: 0, because: arc.because },
    ];
  });
  const machines = new Set(
    chain.map((step) => machineOf[step.step]).filter((machine) => machine !== undefined),
  );
  const by = ['fill', 'closing', 'take-off', 'washer'].find((machine) => machines.has(machine)) ?? 'washer';
  const longest = chain
    .filter((step) => machineOf[step.step] === by)
    .reduce((most, step) => (step.seconds > most.seconds ? step : most), { station: '', seconds: -1 });
  return {
    chain,
    by,
    station: longest.station,
    waits: line.washerPeriod === undefined ? 0 : Math.max(0, line.period - line.washerPeriod),
  };
};

/** Bars of one cycle, for the chart that shows who waits for whom. */
export const cycleChart = (solution: FloorSolution): readonly CycleBar[] =>
  solution.line === undefined ? [] : cycleBars(solution.line.graph, solution.line.cycle.period);
