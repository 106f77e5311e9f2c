import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { faultCurrents, lengths, parallels, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { pointToPointMethod } from './sources.ts';
import { faultConstantTable, usConductor, usSizes } from './us-conductors.ts';

export type FaultConduit = 'steel' | 'not-magnetic';
export type FaultKind = 'three-phase' | 'line-to-line';

/** The constant of the table is in A ft/V. */
const metresOfFoot = 0.3048;

/**
 * Ratio f of the point-to-point method: impedance of the run over that of all ahead of it.
 *
 * Method   f = sqrt(3) L I/(C n U); 2 in place of sqrt(3) between two lines
 * Symbols  L  length     scalar  m
 *          I  available  scalar  A where the run begins
 *          C  constant   scalar  A ft/V of the table: 1/|Z| of a cold conductor
 *          n  parallel   count   conductors a phase
 *          U  voltage    scalar  V line to line
 * Returns  ratio; the current at the end is I/(1 + f)
 * Assumes  |Z| of run and source add as numbers, which they do only at equal angles
 * Cost     O(1)
 * Source   point-to-point method of calculating fault currents
 */
export const pointToPointRatio = (
  available: number,
  length: number,
  constant: number,
  parallel: number,
  voltage: number,
  fault: FaultKind,
): number =>
  ((fault === 'three-phase' ? Math.sqrt(3) : 2) * (length / metresOfFoot) * available) /
  (constant * parallel * voltage);

interface FaultPointToPointInputs {
  readonly available: number;
  readonly voltage: number;
  readonly fault: FaultKind;
  readonly length: number;
  readonly size: string;
  readonly conduit: FaultConduit;
  readonly parallel: number;
}

export const faultPointToPointSheet = defineSheet({
  id: 'power/fault-point-to-point',
  version: 1,
  inputs: {
    available: numberField('current', 'I_1', faultCurrents),
    voltage: numberField('voltage', 'U', voltages),
    fault: choiceField<FaultKind>('\\text{fault}', ['three-phase', 'line-to-line'], 'three-phase'),
    length: numberField('length', 'L', lengths),
    size: { ...choiceField('\\text{size}', usSizes), table: faultConstantTable },
    conduit: choiceField<FaultConduit>('\\text{conduit}', ['steel', 'not-magnetic']),
    parallel: numberField('count', 'n', { ...parallels, assumed: 1 }),
  },
  outputs: {
    ratio: numberField('ratio', 'f'),
    multiplier: numberField('ratio', 'M'),
    current: numberField('current', 'I_2'),
  },
  formula: [
    'f = \\frac{\\sqrt{3}\\, L\\, I_1}{C\\, n\\, U} \\quad (2 \\text{ for } \\sqrt{3} \\text{ between two lines},\\ L \\text{ in ft})',
    'M = \\frac{1}{1 + f}, \\quad I_2 = M\\, I_1',
  ],
  limits: [caution, always('POINT_TO_POINT_ARITHMETIC'), always('FAULT_MOTORS_ADD')],
  sources: [pointToPointMethod, faultConstantTable],
  compute: (i: FaultPointToPointInputs) => {
    const constant = usConductor(i.size).faultConstant[i.conduit === 'steel' ? 0 : 1];
    const ratio = pointToPointRatio(i.available, i.length, constant, i.parallel, i.voltage, i.fault);
    return { ratio, multiplier: 1 / (1 + ratio), current: i.available / (1 + ratio) };
  },
});
