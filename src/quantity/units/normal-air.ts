import { type AirReference, airReferences } from '../air-reference.ts';
import { cubicFoot, hour, litre, minute, one } from '../constants.ts';
import { product, quotient, type Ratio } from '../ratio.ts';
import { type Unit, unit } from '../unit.ts';

interface FreeAir {
  /** The unit without its reference. */
  readonly id: string;
  readonly label?: string;
  readonly factor: Ratio;
  /** Spellings that carry `N` or `s` themselves. */
  readonly also?: readonly string[];
  readonly foot?: true;
}

const volumes: readonly FreeAir[] = [
  { id: 'NL', factor: litre, also: ['Ndm3', 'Nlitre', 'Nlitres', 'SL', 'Nltr'] },
  { id: 'Nm3', label: 'Nm³', factor: one, also: ['Sm3'] },
  { id: 'scf', factor: cubicFoot, also: ['sft3', 'std ft3', 'std cu ft'], foot: true },
];

const flows: readonly FreeAir[] = [
  { id: 'NL/min', factor: quotient(litre, minute), also: ['Ndm3/min', 'SL/min', 'NLPM', 'SLPM', 'Nltr/min'] },
  { id: 'NL/s', factor: litre, also: ['Ndm3/s', 'SL/s'] },
  { id: 'NL/h', factor: quotient(litre, hour), also: ['Ndm3/h'] },
  { id: 'Nm3/h', label: 'Nm³/h', factor: quotient(one, hour), also: ['Nm3/hr', 'Sm3/h'] },
  { id: 'Nm3/min', label: 'Nm³/min', factor: quotient(one, minute), also: ['Sm3/min'] },
  { id: 'scfm', factor: quotient(cubicFoot, minute), also: ['sft3/min', 'std ft3/min'], foot: true },
  { id: 'scfh', factor: quotient(cubicFoot, hour), also: ['sft3/h', 'std ft3/h'], foot: true },
];

/** Words by which each reference is named after a unit. */
const words: Readonly<Record<AirReference['id'], readonly string[]>> = {
  ANR: ['ANR', 'ISO 8778'],
  FAD: ['FAD', 'ISO 1217'],
  'DIN 1343': ['DIN 1343', 'DIN', '0 degC'],
  CAGI: ['CAGI'],
  '15 degC': ['15 degC', 'ISO 2533', 'ISO 13443'],
  '14.7 psia 68 degF': ['14.7 psia 68 degF', '14.7 psi 68 degF', '14.7 psia, 68 degF'],
  '60 degF': ['60 degF', '60 F'],
};

// What a bare unit means; the reference is printed, so nobody is left to guess: `N` is DIN 1343, `s` the
// compressor makers' state. A `N` litre meant as ANR is 8.7 % less air: write `NL/min (ANR)`.
const bare = (air: FreeAir): AirReference['id'] => (air.foot ? 'CAGI' : 'DIN 1343');

const usual = (air: FreeAir, reference: AirReference): boolean =>
  air.foot ? ['CAGI', '14.7 psia 68 degF', '60 degF'].includes(reference.id) : !reference.id.includes('degF');

const namedUnits = (airs: readonly FreeAir[]): readonly Unit[] =>
  airs.flatMap((air) =>
    airReferences
      .filter((reference) => usual(air, reference))
      .map((reference) => {
        // `L/min (ANR)` and `dm3/s ANR` need no N; the reference says it
        const plain = air.id.startsWith('N')
          ? [air.id.slice(1)]
          : [air.id === 'scf' ? 'ft3' : air.id === 'scfm' ? 'cfm' : 'ft3/h'];
        if (air.id.startsWith('NL')) plain.push(`dm3${air.id.slice(2)}`);
        const spellings = [air.id, ...(air.also ?? [])];
        return unit(`${air.id} (${reference.id})`, product(air.factor, reference.keptRatio), {
          label: `${air.label ?? air.id} (${reference.id.replaceAll('deg', '°')})`,
          also: [
            ...(reference.id === bare(air) ? spellings : []),
            ...[...spellings, ...plain].flatMap((spelling) =>
              words[reference.id].flatMap((word) => [`${spelling} (${word})`, `${spelling} ${word}`]),
            ),
          ],
          note: reference.id,
        });
      }),
  );

export const normalAirVolumes = namedUnits(volumes);
export const normalAirFlows = namedUnits(flows);
