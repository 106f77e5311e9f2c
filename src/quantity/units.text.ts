import type { AirReference } from './air-reference.ts';

/** Conventions that a unit rests on, by the `note` of the unit. */
export const unitNoteText: {
  readonly en: Readonly<Record<AirReference['id'] | 'conventionalWater' | 'conventionalMercury', string>>;
} = {
  en: {
    conventionalWater: 'conventional water, 1000 kg/m³ at standard gravity',
    conventionalMercury: 'conventional mercury, 13 595.1 kg/m³ at standard gravity',
    ANR: 'ISO 8778: 100 kPa, 20 °C, 65 % relative humidity; counted as 1 bar, 20 °C',
    FAD: 'ISO 1217: 100 kPa, 20 °C, dry',
    'DIN 1343': 'DIN 1343: 101.325 kPa, 0 °C, dry',
    CAGI: 'compressor makers’ state: 14.5 psia, 68 °F, dry',
    '15 degC': 'ISO 2533 and ISO 13443: 101.325 kPa, 15 °C, dry',
    '14.7 psia 68 degF': 'older US pneumatics: 14.7 psia, 68 °F, 36 % relative humidity; counted without it',
    '60 degF': 'US gas trade: 14.696 psia, 60 °F, dry',
  },
};
