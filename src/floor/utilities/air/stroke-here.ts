import type { Cylinder } from '../../../book/index.ts';
import type { Direction } from '../../../sheets/air/piston-force.ts';
import { seriesFlowSheet } from '../../../sheets/air/series-flow.ts';
import { sonicConductanceSheet } from '../../../sheets/air/sonic-conductance.ts';
import { strokeTimeSheet } from '../../../sheets/air/stroke-time.ts';
import { tubeConductanceSheet } from '../../../sheets/air/tube-conductance.ts';
import type { BookReader } from '../../book-reader.ts';
import type { Calculation } from '../calculation.ts';
import type { Step } from '../graph.ts';
import type { Known } from '../known.ts';
import { tubeVolume } from './air-demand.ts';
import { usualCriticalRatio } from './along-pieces.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';

/** Mass that a cylinder of a bottling line moves where nobody said, common practice. */
const usualMass = 2;
/** Friction of seals as a share of the force at 6 bar, memory. */
const usualFriction = 0.1;
const usualPressure = 6e5;
/** Clearance at the ends where no tube is described: a tenth of the swept volume, common practice. */
const usualClearance = 0.1;

interface Conductance {
  readonly conductance: Known | undefined;
  readonly criticalRatio: Known;
}

const valveOf = (c: Calculation, path: string): Conductance => {
  const at = `${path}/valve`;
  const ratio = c.plain(`${at}/criticalRatio`, usualCriticalRatio)!;
  if (c.plain(`${at}/criticalRatio`) === undefined) c.assume(`${at}/criticalRatio`);
  const stated = c.number(`${at}/conductance`, 'sonicConductance');
  if (stated !== undefined) return { conductance: stated, criticalRatio: ratio };
  const flowCoefficient = c.number(`${at}/kv`, 'flowCoefficient');
  if (flowCoefficient === undefined) c.miss(`${at}/conductance`);
  return {
    conductance: c.run(sonicConductanceSheet, { flowCoefficient, criticalRatio: ratio })?.conductance,
    criticalRatio: ratio,
  };
};

/** Valve and tube in series at the pressure of the supply. */
const wayOf = (
  c: Calculation,
  cylinder: Cylinder,
  path: string,
  pressure: Known | undefined,
): Conductance => {
  const valve = valveOf(c, path);
  if (cylinder.tube === undefined) return valve;
  const tube = c.run(tubeConductanceSheet, {
    bore: c.needed(`${path}/tube/bore`, 'length'),
    length: c.needed(`${path}/tube/length`, 'length'),
  });
  const both = c.run(seriesFlowSheet, {
    conductances: [valve.conductance, tube?.conductance],
    criticalRatios: [valve.criticalRatio, tube?.criticalRatio],
    upstream: pressure,
    downstream: { value: 0, from: { path, assumed: true } },
    atmosphere: atmosphereHere(c),
    temperature: airTemperature(c),
  });
  return both === undefined
    ? { conductance: undefined, criticalRatio: valve.criticalRatio }
    : { conductance: both.conductance, criticalRatio: both.criticalRatio };
};

/** Everything about a stroke but the pressure and what goes with it. */
const strokeInputs = (c: Calculation, index: number, direction: Direction) => {
  const path = `/line/cylinders/${index}`;
  const cylinder = c.book.line!.cylinders![index]!;
  const bore = c.needed(`${path}/bore`, 'length');
  const stroke = c.needed(`${path}/stroke`, 'length');
  if (bore === undefined || stroke === undefined) return undefined;
  const area = 0.25 * Math.PI * bore.value ** 2;
  const dead: Known = tubeVolume(c, cylinder, path) ?? {
    value: usualClearance * area * stroke.value,
    from: { path: `${path}/tube`, assumed: true },
  };
  return {
    direction: { value: direction, from: { path } },
    bore,
    rod: c.numberOr(`${path}/rod`, 'length', 0),
    stroke,
    atmosphere: atmosphereHere(c),
    temperature: airTemperature(c),
    load: c.numberOr(`${path}/force`, 'force', 0),
    friction: c.numberOr(`${path}/friction`, 'force', usualFriction * usualPressure * area),
    mass: c.numberOr(`${path}/mass`, 'mass', usualMass),
    deadDriven: dead,
    deadExhausting: dead,
  };
};

/**
 * The sheet, with every stroke of this book, and of one like it, integrated once: the same cylinder is asked for by the index,
 * by its own figure and by the working. The key is all that goes into it.
 */
const strokeSheetOf = ({ kept }: BookReader): typeof strokeTimeSheet => ({
  ...strokeTimeSheet,
  compute: (inputs) =>
    kept(`stroke ${Object.values(inputs).join(' ')}`, () => strokeTimeSheet.compute(inputs)),
});

/** Step in pressure over which the slope is taken. */
const slopeStep = 0.97;
const air = ['pressure', 'supplyConductance', 'supplyRatio', 'exhaustConductance', 'exhaustRatio'];

/**
 * A stroke at another pressure near the first, without another integration: along the secant to 0.97 of it. Valve and tube
 * pass a little otherwise at another pressure, which the slope leaves out.
 */
const nearStroke = (base: Step): Step['compute'] => {
  let slope: number | undefined;
  const { pressure } = base.inputs as { readonly pressure: number };
  const { longest } = base.outputs as { readonly longest: number };
  return (inputs) => {
    const elsewhere = Object.entries(inputs).some(
      ([name, value]) => !air.includes(name) && value !== base.inputs[name],
    );
    if (elsewhere) return base.compute(inputs);
    if (slope === undefined) {
      const slower = base.compute({ ...base.inputs, pressure: slopeStep * pressure });
      // it stalls just below: nothing straight can be said of it
      if (slower === undefined) return base.compute(inputs);
      slope = (longest - (slower.longest as number)) / (pressure * (1 - slopeStep));
    }
    return { ...base.outputs, longest: longest + slope * ((inputs.pressure as number) - pressure) };
  };
};

/**
 * One stroke of a cylinder at a pressure of its drop.
 *
 * Returns  everything that the sheet says of it; undefined where the cylinder stalls or something is not known
 * Assumes  the exhaust goes through the same tube and valve
 */
export const strokeAt = (
  c: Calculation,
  index: number,
  direction: Direction,
  pressure: Known | undefined,
) => {
  const inputs = strokeInputs(c, index, direction);
  if (inputs === undefined) return undefined;
  const way = wayOf(c, c.book.line!.cylinders![index]!, `/line/cylinders/${index}`, pressure);
  return c.run(
    strokeSheetOf(c.reader),
    {
      ...inputs,
      pressure,
      supplyConductance: way.conductance,
      supplyRatio: way.criticalRatio,
      exhaustConductance: way.conductance,
      exhaustRatio: way.criticalRatio,
    },
    nearStroke,
  );
};
