import type { Problem } from '../quantity/problem.ts';
import { handbookPlans } from '../sheets/contents/handbook-133-constants.ts';
import { handbook133TaresSheet } from '../sheets/contents/handbook-133-tares.ts';
import { planOfLot } from '../sheets/contents/plan-of-lot.ts';
import type { WeighedLot } from './weighed-lot.ts';
import { outputOf, type Worksheet } from './worksheet.ts';

/** In a sample smaller than this the packages that are opened first are all that must be. */
const smallSample = 12;

/**
 * Whether enough packages were opened for the average tare of Handbook 133.
 *
 * Method   enough where all of the sample were, or where it is small; else R_c/R_t of those that were, and the number that
 *          the handbook's table gives for it, which is typed in
 * Returns  what is still wanted: the number by the table, or more tares
 */
export const lotTares = (sheet: Worksheet, lot: WeighedLot): readonly Problem[] => {
  const { packages, tares = [], size = 0, tareSample } = lot;
  const own = packages.flatMap(({ gross, tare }) => (tare === undefined ? [] : [{ gross, tare }]));
  const opened = tares.length > 0 && own.length < packages.length ? tares.length : own.length;
  const { sample } = planOfLot(handbookPlans, size);
  if (sample < smallSample || opened >= sample) return [];
  // which packages an average tare was taken from is not told with a list of tares alone
  const step =
    opened === own.length && own.length > 1
      ? sheet.run(
          handbook133TaresSheet,
          {
            lotSize: size,
            gross: own.map(({ gross }) => gross),
            tares: own.map(({ tare }) => tare),
            typedTares: tareSample,
          },
          { typedTares: 'tareSample' },
        )
      : undefined;
  if (tareSample === undefined) {
    const ratio = step?.ok ? sheet.number(outputOf(step.value, 'ratio')).toPrecision(3) : '–';
    return [{ code: 'LOT_TARES_WANTED_MISSING', path: 'tareSample', given: opened, allowed: ratio }];
  }
  const wanted = Math.min(sample, tareSample);
  return opened < wanted
    ? [{ code: 'LOT_TARES_FEW', path: 'tares', given: opened, allowed: `${wanted}` }]
    : [];
};
