import type { Problem } from '../quantity/problem.ts';
import { densityAtReferenceSheet } from '../sheets/contents/density-at-reference.ts';
import { trueDensitySheet } from '../sheets/contents/true-density.ts';
import { waterDensitySheet } from '../sheets/water/water-density.ts';
import type { ProductDensity, WeighedLot } from './weighed-lot.ts';
import { outputOf, type StepInput, type Worksheet } from './worksheet.ts';

/** So near to the reference temperature a density counts as measured there: 0.1 K is 0.002 % of water. */
const near = 0.1;

const places = { density: 'density', inAir: 'density', temperature: 'density', expansion: 'density' };

const measured = (
  sheet: Worksheet,
  density: Exclude<ProductDensity, 'water'>,
  airDensity: number | undefined,
): StepInput | undefined => {
  if (density.inAir !== true) return density.value;
  const step = sheet.run(trueDensitySheet, { inAir: density.value, airDensity }, places);
  return step.ok ? outputOf(step.value, 'density') : undefined;
};

/**
 * True density of the product at the reference temperature, each step on the worksheet.
 *
 * Method   water: its own sheet; else as measured, out of air, then to the reference temperature by its expansion
 * Returns  the density, or what is missing for it; neither where a sheet refused
 */
export const lotDensity = (
  sheet: Worksheet,
  { density, airDensity }: WeighedLot,
  reference: StepInput & (number | object),
  kelvins: number,
): { readonly density?: StepInput; readonly missing: readonly Problem[] } => {
  if (density === undefined) return { missing: [{ code: 'LOT_DENSITY_MISSING', path: 'density' }] };
  if (density === 'water') {
    const step = sheet.run(waterDensitySheet, { temperature: reference }, { temperature: 'density' });
    return step.ok ? { density: outputOf(step.value, 'density'), missing: [] } : { missing: [] };
  }
  const { temperature, expansion } = density;
  if (temperature === undefined) {
    return { missing: [{ code: 'LOT_DENSITY_TEMPERATURE_MISSING', path: 'density' }] };
  }
  const far = Math.abs(temperature - kelvins) > near;
  if (far && expansion === undefined) {
    return { missing: [{ code: 'LOT_EXPANSION_MISSING', path: 'density' }] };
  }
  const there = measured(sheet, density, airDensity);
  if (there === undefined) return { missing: [] };
  if (!far) return { density: there, missing: [] };
  const step = sheet.run(
    densityAtReferenceSheet,
    { density: there, temperature, reference, expansion },
    places,
  );
  return step.ok ? { density: outputOf(step.value, 'referenceDensity'), missing: [] } : { missing: [] };
};
