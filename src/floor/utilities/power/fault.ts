import { currentsTogetherSheet } from '../../../sheets/power/currents-together.ts';
import { faultBehindTransformerSheet } from '../../../sheets/power/fault-behind-transformer.ts';
import { faultPointToPointSheet } from '../../../sheets/power/fault-point-to-point.ts';
import { faultVectorSheet } from '../../../sheets/power/fault-vector.ts';
import { panelFaultSheet } from '../../../sheets/power/panel-fault.ts';
import { transformerFaultSheet } from '../../../sheets/power/transformer-fault.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { feederImpedance, feederSize } from './feeder.ts';
import { motorCurrents } from './machine-load.ts';

/** Small transformers, memory. */
const usualReactanceRatio = 3;
/** The least of what small transformers of low voltage have, 2 to 5 %: memory. */
const leastImpedance = 0.02;
/** X/R of a source that is nearly all resistance, before a transformer that is nearly all reactance. */
const leastTogether = 0.1;
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

/** Fault current with the angle of what drives it. */
interface Fault {
  readonly current: Known | undefined;
  /** X/R of all that lies ahead; absent where nobody says it. */
  readonly ratio?: Known | undefined;
}

/**
 * Three-phase fault at the end of the feeder: as the site declares it, else from the transformer along the feeder with an
 * infinite network before it.
 */
const faultAtFeeder = (c: Calculation): Fault | undefined => {
  const path = `${c.floorPath}/power`;
  const declared = c.number(`${path}/faultCurrent`, 'current');
  if (declared !== undefined) return { current: declared };
  if (c.book.floors![c.floor]!.power?.transformer === undefined) {
    c.miss(`${path}/faultCurrent`);
    return undefined;
  }
  const impedance = feederImpedance(c, cold);
  const found = c.run(faultVectorSheet, {
    ...transformerInputs(c),
    reactanceRatio: c.numberOr(`${path}/transformer/reactanceRatio`, 'ratio', usualReactanceRatio),
    length: c.needed(`${path}/feeder/length`, 'length'),
    resistance: impedance?.resistance,
    reactance: impedance?.reactance,
    parallel: c.plain(`${path}/feeder/parallel`, 1)!,
  });
  return { current: found?.current, ratio: found?.endRatio };
};

/** Behind the transformer at the line, which lets through what its own impedance leaves. */
const behindStep = (c: Calculation, { current, ratio }: Fault) => {
  const path = `${c.floorPath}/power/stepTransformer`;
  return c.run(faultBehindTransformerSheet, {
    available: current,
    // nobody says the angle of what is declared: at this one the two impedances come to the least together
    sourceRatio: ratio ?? {
      value: leastTogether,
      from: { path: `${c.floorPath}/power/faultCurrent`, assumed: true },
    },
    primary: c.needed(`${c.floorPath}/power/voltage`, 'voltage'),
    apparentPower: c.needed(`${path}/rating`, 'apparentPower'),
    impedance: c.numberOr(`${path}/impedance`, 'ratio', leastImpedance),
    tolerance: { value: 'least-0.9', from: { path: `${path}/impedance`, assumed: true } },
    reactanceRatio: c.numberOr(`${path}/reactanceRatio`, 'ratio', usualReactanceRatio),
    secondary: c.needed(`${path}/secondary`, 'voltage'),
  });
};

const stepped = (c: Calculation): boolean => c.book.floors![c.floor]!.power?.stepTransformer !== undefined;

/** Three-phase fault at the panel of the line. */
export const faultAtPanel = (c: Calculation): Known | undefined => {
  const ahead = faultAtFeeder(c);
  if (ahead === undefined || !stepped(c)) return ahead?.current;
  return behindStep(c, ahead)?.current;
};

/** The same with what the motors of the line feed back. */
export const faultWithMotors = (c: Calculation): Known | undefined => {
  const fault = faultAtPanel(c);
  return c.run(panelFaultSheet, {
    fault,
    motors: c.run(currentsTogetherSheet, { currents: motorCurrents(c) })?.current,
    rating: c.needed(`${c.floorPath}/power/panelRating`, 'current'),
  })?.available;
};

/** The point-to-point method beside it; US sizes only. */
export const faultByPoints = (c: Calculation): Known | undefined => {
  const path = `${c.floorPath}/power`;
  const conduit = c.wordOr<'pvc' | 'steel'>(`${path}/feeder/conduit`, 'steel');
  const current = c.run(faultPointToPointSheet, {
    available: c.run(transformerFaultSheet, transformerInputs(c))?.faultCurrent,
    voltage: c.needed(`${path}/voltage`, 'voltage'),
    length: c.needed(`${path}/feeder/length`, 'length'),
    size: feederSize(c),
    conduit: { value: conduit.value === 'steel' ? 'steel' : 'not-magnetic', from: conduit.from },
    parallel: c.plain(`${path}/feeder/parallel`, 1)!,
  })?.current;
  if (!stepped(c)) return current;
  // at one angle impedances add as numbers, which is this method
  const ratio = c.numberOr(`${path}/stepTransformer/reactanceRatio`, 'ratio', usualReactanceRatio);
  return behindStep(c, { current, ratio })?.arithmetic;
};
