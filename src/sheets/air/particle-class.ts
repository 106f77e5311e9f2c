import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  atMost,
  classByLimit,
  type PurityClass,
  particleLimits,
  particleMassLimits,
  purityClasses,
} from './purity-classes.ts';
import { iso8573 } from './sources.ts';

interface ParticleClassInputs {
  readonly small: number;
  readonly medium: number;
  readonly large: number;
  readonly over5: 'no' | 'yes';
  readonly mass: number;
}

/** Class by counts, 1 to 5; undefined where only the mass can tell. */
const byCount = ({
  small,
  medium,
  large,
  over5,
}: Omit<ParticleClassInputs, 'mass'>): PurityClass | undefined => {
  if (over5 === 'yes') return undefined;
  const counts = [small, medium, large];
  const place = particleLimits.findIndex((limits) =>
    limits.every((limit, i) => limit === null || atMost(counts[i]!, limit)),
  );
  return place < 0 ? undefined : (`${place + 1}` as PurityClass);
};

/**
 * Class of particles of ISO 8573-1 that measured counts meet.
 *
 * Method   the cleanest class whose three limits all hold; by mass where there are particles over 5 um or too many
 * Symbols  small, medium, large  particles/m3 of 0.1 to 0.5, 0.5 to 1 and 1 to 5 um, at 20 degC, 1 bar absolute, dry
 *          mass                  kg/m3  0 where it was not measured
 * Returns  class 1 to 7, or X; class 0 is what user and supplier agree and no measurement here can give it
 * Cost     O(1)
 * Source   ISO 8573-1:2010
 */
export const particleClass = (i: ParticleClassInputs): PurityClass =>
  byCount(i) ?? classByLimit(i.mass, particleMassLimits, 6);

export const particleClassSheet = defineSheet({
  id: 'air/particle-class',
  version: 1,
  inputs: {
    small: numberField('numberConcentration', 'n_{0.1-0.5}', { least: 0, most: 1e15 }),
    medium: numberField('numberConcentration', 'n_{0.5-1}', { least: 0, most: 1e15 }),
    large: numberField('numberConcentration', 'n_{1-5}', { least: 0, most: 1e15 }),
    over5: choiceField<'no' | 'yes'>('d > 5\\,\\mathrm{\\mu m}', ['no', 'yes'], 'no'),
    mass: numberField('massConcentration', 'C_p', { least: 0, most: 1, assumed: 0 }),
  },
  outputs: { particleClass: choiceField<PurityClass>('\\text{class}', purityClasses) },
  formula: ['\\text{class} = \\min \\{ k : n_j \\le n_{j,k} \\text{ for every size } j \\}'],
  limits: [
    { code: 'PURITY_CLASS_ZERO', broken: (_, { particleClass: given }) => given === '1' },
    { code: 'PURITY_SECOND_HAND', broken: () => true },
  ],
  sources: [iso8573],
  check: (i) =>
    byCount(i) === undefined && i.mass === 0
      ? [{ code: 'PARTICLE_MASS_MISSING', path: 'mass', given: i.mass, allowed: '> 0' }]
      : [],
  compute: (i: ParticleClassInputs) => ({ particleClass: particleClass(i) }),
});
