import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { contactLengths, footCounts, masses, someMasses } from './bounds.ts';
import { movingCaution, structuralCaution } from './caution.ts';
import { footForce } from './foot-load.ts';
import { statics } from './sources.ts';

interface GearLoadInputs {
  readonly mass: number;
  readonly gearMass: number;
  readonly wheels: number;
  readonly carryingWheels: number;
  readonly contactLength: number;
  readonly contactWidth: number;
  readonly wheelCapacity: number;
}

export const gearLoadSheet = defineSheet({
  id: 'building/gear-load',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    gearMass: numberField('mass', 'm_g', { ...masses, assumed: 0 }),
    wheels: numberField('count', 'n', footCounts),
    carryingWheels: numberField('count', 'n_c', footCounts),
    contactLength: numberField('length', 'a', contactLengths),
    contactWidth: numberField('length', 'b', contactLengths),
    wheelCapacity: numberField('mass', 'm_w', someMasses),
  },
  outputs: {
    wheelForce: numberField('force', 'F'),
    hardestForce: numberField('force', "F'"),
    pressure: numberField('bearingPressure', "p'"),
    wheelShare: numberField('ratio', 's'),
  },
  formula: [
    "F = \\frac{(m + m_g) g}{n}, \\quad F' = \\frac{(m + m_g) g}{n_c}, \\quad p' = \\frac{F'}{a b}, \\quad s = \\frac{F'}{m_w g}",
  ],
  limits: [
    structuralCaution,
    movingCaution,
    { code: 'GEAR_OVER_CAPACITY', broken: (_, { wheelShare }) => wheelShare > 1 },
    {
      code: 'GEAR_ALL_CARRY',
      broken: ({ wheels, carryingWheels }) => wheels > 3 && carryingWheels === wheels,
    },
    { code: 'GEAR_JOINTS', broken: () => true },
  ],
  sources: [statics],
  check: ({ wheels, carryingWheels }) => [
    ...[
      ['wheels', wheels],
      ['carryingWheels', carryingWheels],
    ].flatMap(([path, given]) =>
      Number.isInteger(given) ? [] : [{ code: 'WHEELS_WHOLE', path: path as string, given }],
    ),
    ...(carryingWheels > wheels
      ? [{ code: 'WHEELS_CARRYING', path: 'carryingWheels', given: carryingWheels, allowed: `<= ${wheels}` }]
      : []),
  ],
  compute: (i: GearLoadInputs) => {
    const mass = i.mass + i.gearMass;
    const hardestForce = footForce(mass, i.carryingWheels, 1);
    return {
      wheelForce: footForce(mass, i.wheels, 1),
      hardestForce,
      pressure: hardestForce / (i.contactLength * i.contactWidth),
      wheelShare: hardestForce / footForce(i.wheelCapacity, 1, 1),
    };
  },
});
