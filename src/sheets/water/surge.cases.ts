import type { SheetCase } from '../sheet-case.ts';
import { characteristics } from './sources.ts';

export const surgeCases: readonly SheetCase[] = [
  {
    name: 'US Army TM 5-813-9: 2 690 ft/s, 6.48 ft/s, 3 400 ft, closed at once',
    source: { title: 'US Army TM 5-813-9', place: 'figure 4-5, public transcription', mark: 'read' },
    inputs: {
      density: 999.55,
      waveSpeed: 819.912,
      length: 1036.32,
      velocityChange: 1.975104,
      closingTime: 0,
    },
    outputs: { criticalTime: 2.53, joukowsky: 1627852, rise: 1627852 },
    tolerance: { relative: 7e-3, reason: 'the manual takes g as 32 ft/s2, 0.54 % low' },
  },
  ...(
    [
      [0.0, 19.51],
      [0.05, 10.78],
      [0.1, 5.39],
      [0.25, 2.156],
      [1, 0.539],
    ] as const
  ).map(([closingTime, bar]) => ({
    name: `18 m of stainless 38 mm from 1.5 m/s in ${closingTime} s`,
    source: characteristics,
    inputs: {
      density: 998.207,
      waveSpeed: 1302.9,
      length: 18,
      velocityChange: 1.5,
      closingTime,
      pressure: 300000,
    },
    outputs: {
      criticalTime: 0.0276,
      joukowsky: 19.51e5,
      rise: bar * 1e5,
      highest: 3e5 + bar * 1e5,
      lowest: 3e5 - bar * 1e5,
    },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  })),
];
