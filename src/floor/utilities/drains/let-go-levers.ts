import { writtenAt, writtenPatch, writtenSi, writtenText } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import type { ZoneAt } from '../heat/zones-of.ts';
import type { UtilityLever } from '../need.ts';
import { cooler, falling, preferredAbove, quantityLever, rising, wordLever } from '../steps.ts';
import type { TieInAt } from '../water/water-draw.ts';
import { bathsDumped } from './drain-flows.ts';

/** Half a litre a minute, and up to fifty. */
const cup = 0.5 / 60_000;
const cups = 100;
/** Half a unit of pH: finer is not held in a tank by hand. */
const halfUnit = 0.5;
const neutral = 7;
/** Where a bath of caustic begins. */
const mostCaustic = 14;
/** More water than this is no way of letting a bath go. */
const mostWater = 20;

/** Baths whose temperature is above what cold water could be: each cooled to the same. */
const coolingLever = (c: Calculation, baths: readonly ZoneAt[]): readonly UtilityLever[] => {
  const all = baths.flatMap(({ path }) => {
    const at = `${path}/letGo/temperature`;
    const warm = writtenAt(c.book, `${path}/temperature`, 'temperature');
    const start = warm === undefined ? undefined : { unit: warm.unit, number: warm.number };
    return start === undefined ? [] : (writtenAt(c.book, at, 'temperature', start) ?? []);
  });
  const [hottest] = all.toSorted((a, b) => writtenSi(b, b.number) - writtenSi(a, a.number));
  if (hottest === undefined) return [];
  return [
    {
      id: 'bathCooled',
      path: hottest.path,
      kind: 'temperature',
      steps: () =>
        cooler(hottest.number).map((number) => {
          const value = writtenSi(hottest, number);
          return {
            patches: all
              .filter((each) => writtenSi(each, each.number) > value)
              .map((each) => writtenPatch(c.book, { ...each, unit: hottest.unit }, number)),
            value,
            text: writtenText(hottest, number),
          };
        }),
    },
  ];
};

/** Baths cooled before they are let go, and cold water into what runs. */
export const temperatureLevers = (c: Calculation, at: TieInAt): readonly UtilityLever[] => [
  ...coolingLever(c, bathsDumped(c.book, at)),
  ...quantityLever(c.book, {
    id: 'tempering',
    path: `${c.floorPath}/drains/tempering`,
    kind: 'volumeFlow',
    numbers: rising('volumeFlow', cup, cups),
    otherwise: { unit: 'L/min', number: 1e-6 },
  }),
];

/** The bath brought down by halves of a unit, to neutral at most; people write the unit before the number. */
const neutralisingLever = (c: Calculation, letGo: string): readonly UtilityLever[] => {
  const path = `${letGo}/acidity`;
  const now = c.number(path, 'acidity')?.value ?? mostCaustic;
  return [
    {
      id: 'neutralised',
      path,
      kind: 'acidity',
      steps: () =>
        falling(
          'acidity',
          halfUnit,
          14,
        )(now, 'pH')
          .filter((acidity) => acidity >= neutral)
          .map((acidity) => ({
            patches: [{ path, value: `pH ${acidity}` }],
            value: acidity,
            text: `pH ${acidity}`,
          })),
    },
  ];
};

/** A caustic bath brought nearer to neutral, thinned, or taken away. */
export const acidityLevers = (c: Calculation, at: TieInAt): readonly UtilityLever[] => {
  const bath = bathsDumped(c.book, at).find(({ zone }) => zone.medium === 'detergent');
  if (bath === undefined) return [];
  const letGo = `${bath.path}/letGo`;
  return [
    ...neutralisingLever(c, letGo),
    ...quantityLever(c.book, {
      id: 'thinned',
      path: `${letGo}/water`,
      kind: 'ratio',
      numbers: (now) => preferredAbove(now, 60).filter((water) => water <= mostWater),
      otherwise: { unit: '', number: 0.1 },
    }),
    ...wordLever('bathCollected', [`${bath.path}/collected`], true, 'treated elsewhere'),
  ];
};
