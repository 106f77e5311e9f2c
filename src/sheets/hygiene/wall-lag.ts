import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures, times } from './bounds.ts';
import { always, heatCaution } from './caution.ts';
import { derived } from './sources.ts';

interface WallLagInputs {
  readonly thickness: number;
  readonly density: number;
  readonly specificHeat: number;
  readonly conductivity: number;
  readonly surface: number;
  readonly spray: number;
  readonly start: number;
  readonly time: number;
}

/**
 * Time constant with which a thin wall follows the spray on its one side.
 *
 * Method   theta = rho s c/h
 * Symbols  s    thickness     scalar  m
 *          rho  density       scalar  kg/m3
 *          c    specificHeat  scalar  J/(kg K)
 *          h    surface       scalar  W/(m2 K)
 * Returns  time, s
 * Assumes  the wall has one temperature: Biot number h s/k under 0.1
 * Cost     O(1)
 * Source   balance of a lumped capacity
 */
export const wallTimeConstant = (
  thickness: number,
  density: number,
  specificHeat: number,
  surface: number,
): number => (density * thickness * specificHeat) / surface;

export const wallLagSheet = defineSheet({
  id: 'hygiene/wall-lag',
  version: 1,
  inputs: {
    thickness: numberField('length', 's', { least: 1e-5, most: 0.1 }),
    density: numberField('density', '\\rho', { least: 500, most: 1e4 }),
    specificHeat: numberField('specificHeat', 'c', { least: 100, most: 5000 }),
    conductivity: numberField('thermalConductivity', 'k', { least: 0.01, most: 500 }),
    surface: numberField('surfaceCoefficient', 'h', { least: 1, most: 1e5 }),
    spray: numberField('temperature', 'T_s', temperatures),
    start: numberField('temperature', 'T_0', { ...temperatures, least: 233.15 }),
    time: numberField('time', 't', times),
  },
  outputs: {
    wall: numberField('temperature', 'T_w'),
    timeConstant: numberField('time', '\\theta'),
    biot: numberField('ratio', '\\mathrm{Bi}'),
    step: numberField('temperatureDifference', 'T_s - T_0'),
  },
  formula: [
    'T_w = T_s - (T_s - T_0) e^{-t/\\theta}, \\quad \\theta = \\frac{\\rho s c}{h}',
    '\\mathrm{Bi} = \\frac{h s}{k}',
  ],
  limits: [
    { code: 'WALL_THICK', broken: (_, { biot }) => biot >= 0.1 },
    // 35 K a zone for glass, memory; tests go to 42 K and more
    { code: 'WALL_STEP_GLASS', broken: (_, { step }) => Math.abs(step) > 35 },
    always('LETHALITY_COLDEST'),
    heatCaution,
  ],
  sources: [derived],
  compute: (i: WallLagInputs) => {
    const timeConstant = wallTimeConstant(i.thickness, i.density, i.specificHeat, i.surface);
    const step = i.spray - i.start;
    return {
      wall: i.spray - step * Math.exp(-i.time / timeConstant),
      timeConstant,
      biot: (i.surface * i.thickness) / i.conductivity,
      step,
    };
  },
});
