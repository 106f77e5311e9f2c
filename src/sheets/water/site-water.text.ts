import type { SheetText } from '../sheet-text.ts';
import { hardnessText } from './hardness.text.ts';

export const siteWaterText: SheetText = {
  en: {
    title: 'Remarks on site water',
    about:
      'What iron, manganese, chlorine, hardness and temperature of the site’s water do to washer and filler.',
    inputs: {
      iron: 'Iron',
      manganese: 'Manganese',
      chlorine: 'Free chlorine',
      hardness: 'Hardness',
      temperature: 'Temperature',
    },
    outputs: { remarks: 'Remarks', answer: 'Answer' },
    options: { answer: { 'no remark': 'no remark', 'ask first': 'ask before the line is fixed' } },
    notes: {
      SITE_WATER_IRON:
        'Iron over 0.3 mg/L (US secondary level, memory): brown film on bottles, fouled softeners and membranes, coated electrodes of meters.',
      SITE_WATER_MANGANESE: 'Manganese over 0.05 mg/L (US secondary level, memory): black film.',
      SITE_WATER_CHLORINE:
        'Chlorine over about 0.5 mg/L is tasted (common practice) and harms membranes: a carbon filter ahead of product water, with a plan against growth behind it.',
      SITE_WATER_CHLORINE_HIGH:
        'Chlorine over 4 mg/L, the US highest residual (memory): measure again, ask the utility.',
      HARDNESS_SCALE: hardnessText.en.notes.HARDNESS_SCALE!,
      SITE_WATER_WARM:
        'Warmer than 20 °C: growth in dead legs and tanks, and cooling rinses and glass steps change (common practice; the local rule decides).',
      SITE_WATER_ONE_SAMPLE:
        'One sample is one day: ask the utility for a year’s range, and what changes with the source. Whether water may be filled is decided by the authority.',
    },
  },
};
