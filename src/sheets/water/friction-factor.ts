import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { darcyWeisbach, epanetManual } from './sources.ts';

/** Where laminar flow ends and turbulent flow is certain; the limits of EPANET 2.2 User Manual, chapter 12. */
export const laminarBelow = 2000;
export const turbulentAbove = 4000;

const perDecade = 2 / Math.LN10;

/** x = 1/sqrt(f) of Colebrook-White. Serghides' start is within 2e-5; each Newton step squares what is left. */
const colebrookRoot = (a: number, b: number): number => {
  const A = -perDecade * Math.log(a + (12 / 2.51) * b);
  const B = -perDecade * Math.log(a + b * A);
  const C = -perDecade * Math.log(a + b * B);
  const curvature = C - 2 * B + A;
  let x = curvature === 0 ? C : A - ((B - A) * (B - A)) / curvature;
  for (let i = 0; i < 2; i++) {
    const inside = a + b * x;
    x -= (x + perDecade * Math.log(inside)) / (1 + (perDecade * b) / inside);
  }
  return x;
};

/** The cubic between Re 2 000 (64/Re, value and slope) and Re 4 000 (`value`, and `slope` = Re df/dRe there). */
const transition = (re: number, value: number, slope: number): number => {
  const R = re / 2000;
  const FA = value;
  const FB = 2 * value + slope;
  return (
    7 * FA -
    FB +
    R * (0.128 - 17 * FA + 2.5 * FB + R * (-0.128 + 13 * FA - 2 * FB + R * (0.032 - 3 * FA + 0.5 * FB)))
  );
};

/**
 * Darcy friction factor of a full round pipe, Colebrook-White where the flow is turbulent.
 *
 * Method   Re <= 2 000  f = 64/Re;
 *          Re >= 4 000  1/sqrt(f) = -2 log10(eps/(3.7 D) + 2.51/(Re sqrt(f))), solved to 1e-12;
 *          between      the cubic that has value and slope of both neighbours, so that the loss never falls
 * Symbols  Re     re                 number  > 0
 *          eps/D  relativeRoughness  ratio   0 to 0.05 in the source; to 0.5 the equation still has one root
 * Returns  Darcy factor (four times the Fanning factor)
 * Assumes  between Re 2 000 and 4 000 the real flow flips between two states: the value there is indicative
 * Cost     O(1); 5 logarithms when turbulent
 * Source   C. F. Colebrook 1939; start of T. K. Serghides 1984; cubic: the form of the EPANET 2.2 engine with
 *          Colebrook's value and slope at 4 000 in place of Swamee-Jain's
 */
export const frictionFactor = (re: number, relativeRoughness: number): number => {
  if (re <= laminarBelow) return 64 / re;
  const a = relativeRoughness / 3.7;
  if (re >= turbulentAbove) {
    const x = colebrookRoot(a, 2.51 / re);
    return 1 / (x * x);
  }
  const b = 2.51 / turbulentAbove;
  const x = colebrookRoot(a, b);
  const inside = a + b * x;
  // Re dx/dRe, from differentiating the equation; Re df/dRe = -2 x^-3 Re dx/dRe
  const dx = (perDecade * b * x) / inside / (1 + (perDecade * b) / inside);
  return transition(re, 1 / (x * x), (-2 * dx) / (x * x * x));
};

/**
 * Darcy friction factor as the EPANET engine has it: Swamee-Jain where the flow is turbulent.
 *
 * Method   Re <= 2 000  f = 64/Re;  Re >= 4 000  f = 0.25/log10(eps/(3.7 D) + 5.74/Re^0.9)^2;  between: Dunlop's cubic
 * Symbols  Re     re                 number  > 0
 *          eps/D  relativeRoughness  ratio   0 to 0.05
 * Returns  Darcy factor; 1.6 to 3.4 % above Colebrook-White at Re 4 000, within about 0.8 % from 1e5
 * Cost     O(1); one logarithm and one power
 * Source   EPANET 2.2, hydcoeffs.c (the sign of the cubic's slope term is misprinted in the manual's chapter 12)
 */
export const swameeJainFactor = (re: number, relativeRoughness: number): number => {
  if (re <= laminarBelow) return 64 / re;
  const at = Math.max(re, turbulentAbove);
  const friction = 5.74 / at ** 0.9;
  const inside = relativeRoughness / 3.7 + friction;
  const x = -perDecade * Math.log(inside);
  const value = 1 / (x * x);
  if (re >= turbulentAbove) return value;
  // Re dx/dRe = 0.9 c friction/inside
  const dx = (0.9 * perDecade * friction) / inside;
  return transition(re, value, (-2 * dx) / (x * x * x));
};

/** How the turbulent part is taken: the reference, or what EPANET has. */
export type FrictionLaw = 'colebrook' | 'swamee-jain';

export const frictionFactorSheet = defineSheet({
  id: 'water/friction-factor',
  version: 1,
  inputs: {
    reynolds: numberField('ratio', '\\mathrm{Re}', { least: 1e-6, most: 1e12 }),
    relativeRoughness: numberField('ratio', '\\varepsilon / D', { least: 0, most: 0.5 }),
    law: choiceField<FrictionLaw>('\\text{law}', ['colebrook', 'swamee-jain'], 'colebrook'),
  },
  outputs: { frictionFactor: numberField('ratio', 'f') },
  formula: [
    'f = \\frac{64}{\\mathrm{Re}} \\quad (\\mathrm{Re} \\le 2000)',
    '\\frac{1}{\\sqrt{f}} = -2 \\log_{10} \\left( \\frac{\\varepsilon}{3.7 D} + \\frac{2.51}{\\mathrm{Re} \\sqrt{f}} \\right) \\quad (\\mathrm{Re} \\ge 4000)',
    'f = \\frac{0.25}{\\left[ \\log_{10} \\left( \\frac{\\varepsilon}{3.7 D} + \\frac{5.74}{\\mathrm{Re}^{0.9}} \\right) \\right]^2} \\quad \\text{(Swamee-Jain)}',
    'f = \\text{cubic with the value and slope of both neighbours} \\quad (2000 < \\mathrm{Re} < 4000)',
  ],
  limits: [
    {
      code: 'FRICTION_TRANSITION',
      broken: ({ reynolds }) => reynolds > laminarBelow && reynolds < turbulentAbove,
    },
    { code: 'FRICTION_ROUGHNESS', broken: ({ relativeRoughness }) => relativeRoughness > 0.05 },
    { code: 'FRICTION_REYNOLDS', broken: ({ reynolds }) => reynolds > 1e8 },
  ],
  sources: [darcyWeisbach, epanetManual],
  compute: (i: {
    readonly reynolds: number;
    readonly relativeRoughness: number;
    readonly law: FrictionLaw;
  }) => ({
    frictionFactor: (i.law === 'colebrook' ? frictionFactor : swameeJainFactor)(
      i.reynolds,
      i.relativeRoughness,
    ),
  }),
});
