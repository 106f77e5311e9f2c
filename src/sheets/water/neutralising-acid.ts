import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { causticAcidity } from '../hygiene/caustic-ph.ts';
import { chemicalCaution } from '../hygiene/caution.ts';
import { volumes } from './bounds.ts';
import { arithmetic } from './sources.ts';

export type NeutralisingAcid = 'sulfuric' | 'hydrochloric' | 'phosphoric' | 'citric' | 'carbon dioxide';

/** Molar mass, kg/mol, and ions of hydrogen that count on the way to about pH 8. */
const acids: Readonly<Record<NeutralisingAcid, { readonly molarMass: number; readonly ions: number }>> = {
  sulfuric: { molarMass: 0.098079, ions: 2 },
  hydrochloric: { molarMass: 0.036461, ions: 1 },
  // to the second ion: the third is weaker than carbonate
  phosphoric: { molarMass: 0.097994, ions: 2 },
  citric: { molarMass: 0.192124, ions: 3 },
  // to bicarbonate
  'carbon dioxide': { molarMass: 0.04401, ions: 1 },
};

/** Of NaOH, kg/mol. */
const causticMass = 0.039997;

/**
 * Pure acid that neutralises a caustic.
 *
 * Method   m = c V/M_NaOH M_a/z
 * Symbols  V    volume         scalar  m3
 *          c    concentration  scalar  kg/m3  of free NaOH
 *          M_a  molar mass, z ions of the acid
 * Returns  kg
 * Assumes  no carbonate, which takes more; hence titrate
 * Cost     O(1)
 * Source   stoichiometry
 */
export const acidMass = (volume: number, concentration: number, acid: NeutralisingAcid): number =>
  (((volume * concentration) / causticMass) * acids[acid].molarMass) / acids[acid].ions;

interface NeutralisingAcidInputs {
  readonly volume: number;
  readonly caustic: number;
  readonly acid: NeutralisingAcid;
  readonly strength: number;
}

export const neutralisingAcidSheet = defineSheet({
  id: 'water/neutralising-acid',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', volumes),
    caustic: numberField('soluteConcentration', 'c', { least: 0, most: 200 }),
    acid: choiceField<NeutralisingAcid>('\\text{acid}', Object.keys(acids) as NeutralisingAcid[]),
    strength: numberField('massFraction', 's', { least: 0.01, most: 1, assumed: 1 }),
  },
  outputs: {
    causticMass: numberField('mass', 'm_c'),
    pureAcid: numberField('mass', 'm_a'),
    product: numberField('mass', 'm_p'),
    acidity: numberField('acidity', '\\mathrm{pH}'),
    wasteConcentration: numberField('soluteConcentration', 'c_{12.5}'),
  },
  formula: [
    'm_c = c V, \\quad m_a = \\frac{m_c}{M_{\\mathrm{NaOH}}} \\frac{M_a}{z}, \\quad m_p = \\frac{m_a}{s}',
    '\\mathrm{pH} = 14 + \\log_{10} \\frac{c}{40\\ \\mathrm{kg/m^3}}, \\quad c_{12.5} = 10^{-1.5} \\cdot 40\\ \\mathrm{kg/m^3}',
  ],
  limits: [
    chemicalCaution,
    { code: 'CAUSTIC_WASTE', broken: (_, { acidity }) => acidity >= 12.5 },
    { code: 'ACID_NO_CHLORINE', broken: () => true },
    { code: 'ACID_HEAT', broken: ({ caustic }) => caustic >= 10 },
    { code: 'ACID_TITRATE', broken: () => true },
  ],
  sources: [
    arithmetic,
    { title: 'IUPAC standard atomic weights', edition: '2021', place: 'molar masses', mark: 'memory' },
  ],
  compute: (i: NeutralisingAcidInputs) => {
    const pureAcid = acidMass(i.volume, i.caustic, i.acid);
    return {
      causticMass: i.volume * i.caustic,
      pureAcid,
      product: pureAcid / i.strength,
      acidity: causticAcidity(i.caustic),
      // molar mass of 40 g/mol, as the pH takes it
      wasteConcentration: 40 * 10 ** -1.5,
    };
  },
});
