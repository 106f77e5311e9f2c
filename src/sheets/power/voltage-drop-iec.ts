import { choiceField, numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { currents, lengths, powerFactors, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import type { Phases } from './motor-current-us.ts';

const annex: Source = {
  title: 'IEC 60364-5-52',
  edition: '2009',
  place: 'annex G, public transcription',
  mark: 'read',
};

/** Ohm m, of the annex: 1.25 times the resistivity at 20 degC. */
export const annexResistivity = { copper: 0.0225e-6, aluminium: 0.036e-6 } as const;
export type ConductorMetal = keyof typeof annexResistivity;
/** Ohm/m, of the annex. */
const annexReactance = 0.08e-3;

/**
 * Voltage drop by the annex of IEC 60364-5-52.
 *
 * Method   u = b (rho L/S cos(phi) + lambda L sin(phi)) I; b = 1 three-phase, 2 single-phase
 * Symbols  rho     0.0225 ohm mm2/m copper, 0.036 aluminium;  lambda  0.08 mohm/m
 *          L  length  scalar  m one way;  S  area  scalar  m2;  I  current  scalar  A
 * Returns  V, line to neutral: its share is of the voltage to neutral, not of the line voltage
 * Cost     O(1)
 * Source   IEC 60364-5-52 annex G; one copy prints lambda L sin(phi) over S, a misprint
 */
export const voltageDropIec = (
  current: number,
  length: number,
  area: number,
  metal: ConductorMetal,
  powerFactor: number,
  phases: Phases,
): number =>
  (phases === 'three-phase' ? 1 : 2) *
  current *
  length *
  ((annexResistivity[metal] / area) * powerFactor +
    annexReactance * Math.sqrt(Math.max(0, 1 - powerFactor * powerFactor)));

interface VoltageDropIecInputs {
  readonly phases: Phases;
  readonly voltage: number;
  readonly current: number;
  readonly length: number;
  readonly area: number;
  readonly metal: ConductorMetal;
  readonly powerFactor: number;
}

const toNeutral = (i: VoltageDropIecInputs): number =>
  voltageDropIec(i.current, i.length, i.area, i.metal, i.powerFactor, i.phases);

export const voltageDropIecSheet = defineSheet({
  id: 'power/voltage-drop-iec',
  version: 1,
  inputs: {
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase'], 'three-phase'),
    voltage: numberField('voltage', 'U', voltages),
    current: numberField('current', 'I_B', currents),
    length: numberField('length', 'L', lengths),
    area: numberField('conductorArea', 'S', { least: 0.5e-6, most: 630e-6, table: annex }),
    metal: choiceField<ConductorMetal>('\\text{metal}', ['copper', 'aluminium'], 'copper'),
    powerFactor: numberField('ratio', '\\cos\\varphi', { ...powerFactors, assumed: 0.8 }),
  },
  outputs: {
    toNeutral: numberField('voltage', 'u'),
    share: numberField('ratio', 'u / U_0'),
    lineToLine: numberField('voltage', '\\sqrt{3}\\, u'),
  },
  formula: [
    'u = b \\left( \\frac{\\rho_1 L}{S} \\cos\\varphi + \\lambda L \\sin\\varphi \\right) I_B, \\quad b = 1 \\text{ three-phase}, 2 \\text{ single-phase}',
    '\\frac{u}{U_0}, \\quad U_0 = \\frac{U}{\\sqrt{3}}',
  ],
  limits: [
    caution,
    always('DROP_IEC_TO_NEUTRAL'),
    { code: 'DROP_OVER_3', broken: (_, { share }) => share > 0.03 },
    { code: 'DROP_OVER_5', broken: (_, { share }) => share > 0.05 },
  ],
  sources: [annex],
  check: (i) => {
    const lost = toNeutral(i);
    const held = i.voltage / Math.sqrt(3);
    return lost >= held
      ? [{ code: 'DROP_COLLAPSE', path: 'current', given: i.current, allowed: `< ${Math.round(held)} V` }]
      : [];
  },
  compute: (i: VoltageDropIecInputs) => ({
    toNeutral: toNeutral(i),
    share: (toNeutral(i) * Math.sqrt(3)) / i.voltage,
    lineToLine: Math.sqrt(3) * toNeutral(i),
  }),
});
