import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const confidences = [0.5, 0.6, 0.8, 0.9, 0.95, 0.99] as const;

/** Half of chi-squared of 2k + 2 degrees; a row for k = 0, 1, 2 …, a column for each confidence. */
const factors = [
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the table prints ln 2 and ln 10 to four digits
  [0.6931, 0.9163, 1.6094, 2.3026, 2.9957, 4.6052],
  [1.6783, 2.0223, 2.9943, 3.8897, 4.7439, 6.6384],
  [2.6741, 3.1054, 4.279, 5.3223, 6.2958, 8.4059],
  [3.6721, 4.1753, 5.515, 6.6808, 7.7537, 10.0451],
  [4.6709, 5.2366, 6.721, 7.9936, 9.1535, 11.6046],
  [5.6702, 6.2919, 7.906, 9.2747, 10.513, 13.1085],
  [6.6696, 7.3426, 9.0754, 10.5321, 11.8424, 14.5706],
  [7.6692, 8.3898, 10.2325, 11.7709, 13.1481, 16.0],
  [8.669, 9.434, 11.3798, 12.9947, 14.4346, 17.4027],
  [9.6687, 10.4757, 12.5188, 14.206, 15.7052, 18.7831],
  [10.6685, 11.5153, 13.6507, 15.4066, 16.9622, 20.1447],
] as const;

const shift = 480 * 60;

export const meanTimeShownCases: readonly SheetCase[] = [
  ...factors.flatMap((row, stops) =>
    row.map(
      (factor, i): SheetCase => ({
        name: `${stops} stops, ${Math.round(100 * confidences[i]!)} %: running time over ${factor}`,
        source: statisticsScript,
        inputs: { running: shift, stops, endedBy: 'time', confidence: confidences[i]! },
        outputs: { factor },
        tolerance: { absolute: 5.1e-5, reason: 'four printed digits after the point' },
      }),
    ),
  ),
  ...[160.23, 101.18, 76.24, 61.91, 52.44].map(
    (minutes, stops): SheetCase => ({
      name: `480 min with ${stops} stops show ${minutes} min between stops at 95 %`,
      source: statisticsScript,
      inputs: { running: shift, stops, endedBy: 'time', confidence: 0.95 },
      outputs: { shown: minutes * 60 },
      tolerance: { absolute: 0.6, reason: 'a hundredth of a minute' },
      notes: ['STOPS_STEADY'],
    }),
  ),
  {
    name: 'the same ended by its fourth stop shows 61.906 min: as with three, the fourth was awaited',
    source: statisticsScript,
    inputs: { running: shift, stops: 4, endedBy: 'stop', confidence: 0.95 },
    outputs: { shown: 61.90627586749413 * 60 },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
  },
];
