import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, lengths, parallels, powerFactors, resistancesPerLength, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import type { Phases } from './motor-current-us.ts';
import { circuitTheory } from './sources.ts';

const sine = (cosine: number): number => Math.sqrt(Math.max(0, 1 - cosine * cosine));

/**
 * Voltage dropped along a run, the usual formula.
 *
 * Method   dU = sqrt(3) I L (r cos(phi) + x sin(phi)); 2 in place of sqrt(3) on a single phase
 * Symbols  I    current      scalar  A
 *          L    length       scalar  m one way
 *          r    resistance   scalar  ohm/m of one conductor, warm
 *          x    reactance    scalar  ohm/m of one conductor, at the frequency in use
 *          cos  powerFactor  ratio   lagging
 * Returns  V, line to line (single phase: of that circuit)
 * Assumes  balanced load; within 1 % of the exact one while the drop is under 10 %
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const lineDrop = (
  current: number,
  length: number,
  resistance: number,
  reactance: number,
  powerFactor: number,
  phases: Phases,
): number =>
  (phases === 'three-phase' ? Math.sqrt(3) : 2) *
  current *
  length *
  (resistance * powerFactor + reactance * sine(powerFactor));

/**
 * Voltage dropped along a run, exact for a constant current at the load's power factor.
 *
 * Method   E^2 = (V cos + I R)^2 + (V sin + I X)^2 solved for V; three-phase with U/sqrt(3) a phase, else both ways
 * Symbols  voltage  scalar  V at the source, others as for `lineDrop`
 * Returns  V; NaN where the run cannot carry that current at all
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const exactDrop = (
  voltage: number,
  current: number,
  length: number,
  resistance: number,
  reactance: number,
  powerFactor: number,
  phases: Phases,
): number => {
  const per = phases === 'three-phase' ? Math.sqrt(3) : 1;
  const way = phases === 'three-phase' ? 1 : 2;
  const source = voltage / per;
  const ir = current * length * way * resistance;
  const ix = current * length * way * reactance;
  const along = ir * powerFactor + ix * sine(powerFactor);
  const across = ix * powerFactor - ir * sine(powerFactor);
  const load = Math.sqrt(source * source - across * across) - along;
  return load > 0 ? voltage - load * per : Number.NaN;
};

interface VoltageDropInputs {
  readonly phases: Phases;
  readonly voltage: number;
  readonly current: number;
  readonly length: number;
  readonly resistance: number;
  readonly reactance: number;
  readonly powerFactor: number;
  readonly parallel: number;
}

const usual = (i: VoltageDropInputs): number =>
  lineDrop(i.current / i.parallel, i.length, i.resistance, i.reactance, i.powerFactor, i.phases);
const exact = (i: VoltageDropInputs): number =>
  exactDrop(i.voltage, i.current / i.parallel, i.length, i.resistance, i.reactance, i.powerFactor, i.phases);

export const voltageDropSheet = defineSheet({
  id: 'power/voltage-drop',
  version: 1,
  inputs: {
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase'], 'three-phase'),
    voltage: numberField('voltage', 'U', voltages),
    current: numberField('current', 'I', currents),
    length: numberField('length', 'L', lengths),
    resistance: numberField('resistancePerLength', 'r', resistancesPerLength),
    reactance: numberField('resistancePerLength', 'x', resistancesPerLength),
    powerFactor: numberField('ratio', '\\cos\\varphi', powerFactors),
    parallel: numberField('count', 'n', { ...parallels, assumed: 1 }),
  },
  outputs: {
    drop: numberField('voltage', '\\Delta U'),
    share: numberField('ratio', '\\Delta U / U'),
    exactDrop: numberField('voltage', '\\Delta U_{\\text{exact}}'),
    loadVoltage: numberField('voltage', 'U_2'),
  },
  formula: [
    '\\Delta U = \\sqrt{3}\\, \\frac{I}{n} L (r \\cos\\varphi + x \\sin\\varphi) \\quad (2 \\text{ for } \\sqrt{3} \\text{ on a single phase})',
    '\\left( \\tfrac{U}{\\sqrt{3}} \\right)^2 = (V \\cos\\varphi + I R)^2 + (V \\sin\\varphi + I X)^2, \\quad \\Delta U_{\\text{exact}} = U - \\sqrt{3}\\, V',
    'U_2 = U - \\Delta U_{\\text{exact}}',
  ],
  limits: [
    caution,
    { code: 'DROP_OVER_3', broken: (_, { share }) => share > 0.03 },
    { code: 'DROP_OVER_5', broken: (_, { share }) => share > 0.05 },
    { code: 'DROP_APPROXIMATE', broken: (_, { share }) => share > 0.1 },
    always('DROP_WARM_CONDUCTOR'),
  ],
  sources: [circuitTheory],
  check: (i) =>
    Number.isNaN(exact(i))
      ? [{ code: 'DROP_COLLAPSE', path: 'current', given: i.current, allowed: `< ${i.voltage} V` }]
      : [],
  compute: (i: VoltageDropInputs) => ({
    drop: usual(i),
    share: usual(i) / i.voltage,
    exactDrop: exact(i),
    loadVoltage: i.voltage - exact(i),
  }),
});
