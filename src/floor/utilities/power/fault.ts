import { currentsTogetherSheet } from '../../../sheets/power/currents-together.ts';
import { faultPointToPointSheet } from '../../../sheets/power/fault-point-to-point.ts';
import { faultVectorSheet } from '../../../sheets/power/fault-vector.ts';
import { panelFaultSheet } from '../../../sheets/power/panel-fault.ts';
import { transformerFaultSheet } from '../../../sheets/power/transformer-fault.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { feederImpedance, feederSize } from './feeder.ts';
import { motorCurrents, onFloorSide } from './machine-load.ts';

/** Small transformers, memory. */
const usualReactanceRatio = 3;
/** The highest fault flows in cold conductors. */
const cold = 293.15;

const transformerInputs = (c: Calculation) => {
  const path = `${c.floorPath}/power/transformer`;
  return {
    apparentPower: c.needed(`${path}/rating`, 'apparentPower'),
    voltage: c.needed(`${c.floorPath}/power/voltage`, 'voltage'),
    impedance: c.needed(`${path}/impedance`, 'ratio'),
    // a transformer may have a tenth less impedance than its plate says
    tolerance: { value: 'least-0.9', from: { path: `${path}/impedance`, assumed: true } },
  } as const;
};

/**
 * Three-phase fault at the panel of the line: as the site declares it, else from the transformer along the feeder with an
 * infinite network before it.
 */
export const faultAtPanel = (c: Calculation): Known | undefined => {
  const path = `${c.floorPath}/power`;
  const declared = c.number(`${path}/faultCurrent`, 'current');
  if (declared !== undefined) return declared;
  if (c.book.floors![c.floor]!.power?.transformer === undefined) {
    c.miss(`${path}/faultCurrent`);
    return undefined;
  }
  const impedance = feederImpedance(c, cold);
  return c.run(faultVectorSheet, {
    ...transformerInputs(c),
    reactanceRatio: c.numberOr(`${path}/transformer/reactanceRatio`, 'ratio', usualReactanceRatio),
    length: c.needed(`${path}/feeder/length`, 'length'),
    resistance: impedance?.resistance,
    reactance: impedance?.reactance,
    parallel: c.plain(`${path}/feeder/parallel`, 1)!,
  })?.current;
};

/** The same with what the motors of the line feed back. */
export const faultWithMotors = (c: Calculation): Known | undefined => {
  const fault = faultAtPanel(c);
  return c.run(panelFaultSheet, {
    fault,
    motors: onFloorSide(c, c.run(currentsTogetherSheet, { currents: motorCurrents(c) })?.current),
    rating: c.needed(`${c.floorPath}/power/panelRating`, 'current'),
  })?.available;
};

/** The point-to-point method beside it; US sizes only. */
export const faultByPoints = (c: Calculation): Known | undefined => {
  const path = `${c.floorPath}/power`;
  const conduit = c.wordOr<'pvc' | 'steel'>(`${path}/feeder/conduit`, 'steel');
  return c.run(faultPointToPointSheet, {
    available: c.run(transformerFaultSheet, transformerInputs(c))?.faultCurrent,
    voltage: c.needed(`${path}/voltage`, 'voltage'),
    length: c.needed(`${path}/feeder/length`, 'length'),
    size: feederSize(c),
    conduit: { value: conduit.value === 'steel' ? 'steel' : 'not-magnetic', from: conduit.from },
    parallel: c.plain(`${path}/feeder/parallel`, 1)!,
  })?.current;
};
