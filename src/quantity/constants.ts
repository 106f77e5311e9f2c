import { exact, product, quotient } from './ratio.ts';

// Each of these is exact by definition. Source: NIST SP 811 (2008), appendix B, and its footnotes; read in a
// public transcription where the tests say so, the definitions themselves from memory.

export const one = exact('1');
export const ten = exact('10');
export const hundred = exact('100');
export const thousand = exact('1000');
export const million = exact('1000000');
export const thousandth = exact('0.001');
export const millionth = exact('0.000001');

export const minute = exact('60');
export const hour = exact('3600');
export const day = exact('86400');

/** International yard and pound agreement, 1959. */
export const inch = exact('0.0254');
export const foot = exact('0.3048');
export const yard = exact('0.9144');
export const mile = exact('1609.344');
export const pound = exact('0.45359237');
export const ounce = quotient(pound, exact('16'));

export const squareInch = product(inch, inch);
export const squareFoot = product(foot, foot);
export const cubicInch = product(inch, inch, inch);
export const cubicFoot = product(foot, foot, foot);

export const litre = thousandth;
/** 231 cubic inches. */
export const usGallon = product(exact('231'), cubicInch);
/** Units of Measurement Regulations (UK) 1995. */
export const imperialGallon = exact('0.00454609');

/** Standard acceleration of free fall, third CGPM, 1901. */
export const standardGravity = exact('9.80665');
export const kilogramForce = standardGravity;
export const poundForce = product(pound, standardGravity);

export const bar = exact('100000');
export const atmosphere = exact('101325');
export const psi = quotient(poundForce, squareInch);
/** Conventional water: 1000 kg/m3 at standard gravity, whatever the temperature. */
export const metreOfWater = product(thousand, standardGravity);
/** Conventional mercury: 13 595.1 kg/m3 at standard gravity. */
export const metreOfMercury = product(exact('13595.1'), standardGravity);

/** International Table Btu: 1 lb of 4.1868 kJ/(kg K) by one degree Fahrenheit. */
export const btu = quotient(product(exact('4186.8'), pound), exact('1.8'));
/** 550 foot pound-force a second. */
export const horsepower = product(exact('550'), foot, poundForce);
/** 75 metre kilogram-force a second. */
export const metricHorsepower = product(exact('75'), kilogramForce);
