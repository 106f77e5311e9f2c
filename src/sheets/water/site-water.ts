import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';

export type SiteWaterAnswer = 'no remark' | 'ask first';

/**
 * Lines over which a figure of site water gets a remark. Iron and manganese: US secondary levels 0.3 and 0.05
 * mg/L; chlorine 4 mg/L is the US highest residual (all memory). Warm from 20 degC on, 25 degC the European
 * guide for cold water (common practice).
 */
const lines = {
  iron: 0.3e-3,
  manganese: 0.05e-3,
  chlorine: 4e-3,
  tastes: 0.5e-3,
  warm: 293.15,
  hard: 0.1,
} as const;

interface SiteWaterInputs {
  readonly iron: number;
  readonly manganese: number;
  readonly chlorine: number;
  readonly hardness: number;
  readonly temperature: number;
}

/** How many lines of site water a figure passes. */
export const siteWaterRemarks = (i: SiteWaterInputs): number =>
  [
    i.iron > lines.iron,
    i.manganese > lines.manganese,
    i.chlorine > lines.tastes,
    i.hardness > lines.hard,
    i.temperature > lines.warm,
  ].filter(Boolean).length;

export const siteWaterSheet = defineSheet({
  id: 'water/site-water',
  version: 1,
  inputs: {
    iron: numberField('soluteConcentration', 'c_{Fe}', { least: 0, most: 1, assumed: 0 }),
    manganese: numberField('soluteConcentration', 'c_{Mn}', { least: 0, most: 1, assumed: 0 }),
    chlorine: numberField('soluteConcentration', 'c_{Cl}', { least: 0, most: 1, assumed: 0 }),
    hardness: numberField('waterHardness', 'H', { least: 0, most: 20, assumed: 0 }),
    temperature: numberField('temperature', 'T', { ...temperatures, assumed: 288.15 }),
  },
  outputs: {
    remarks: numberField('count', 'n'),
    answer: choiceField<SiteWaterAnswer>('\\text{answer}', ['no remark', 'ask first']),
  },
  formula: [
    'n = [c_{Fe} > 0.3] + [c_{Mn} > 0.05] + [c_{Cl} > 0.5] + [H > 100] + [T > 20\\ \\mathrm{^\\circ C}], \\quad \\text{mg/L}',
  ],
  limits: [
    { code: 'SITE_WATER_IRON', broken: ({ iron }) => iron > lines.iron },
    { code: 'SITE_WATER_MANGANESE', broken: ({ manganese }) => manganese > lines.manganese },
    { code: 'SITE_WATER_CHLORINE', broken: ({ chlorine }) => chlorine > lines.tastes },
    { code: 'SITE_WATER_CHLORINE_HIGH', broken: ({ chlorine }) => chlorine > lines.chlorine },
    { code: 'HARDNESS_SCALE', broken: ({ hardness }) => hardness > lines.hard },
    { code: 'SITE_WATER_WARM', broken: ({ temperature }) => temperature > lines.warm },
    { code: 'SITE_WATER_ONE_SAMPLE', broken: () => true },
  ],
  sources: [
    {
      title: '40 CFR 143 and 141',
      place: 'secondary levels of iron and manganese, highest residual of chlorine',
      mark: 'memory',
    },
    {
      title: 'bottling and washing trade',
      place: 'hardness, taste of chlorine, warm water',
      mark: 'common practice',
    },
  ],
  compute: (i: SiteWaterInputs) => {
    const remarks = siteWaterRemarks(i);
    return { remarks, answer: (remarks > 0 ? 'ask first' : 'no remark') as SiteWaterAnswer };
  },
});
