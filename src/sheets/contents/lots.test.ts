import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialCdf } from '../../statistics/binomial.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { runSheet } from '../frame.ts';
import { euLotSheet } from './eu-lot.ts';
import { handbookPlans } from './handbook-133-constants.ts';
import { handbook133LotSheet } from './handbook-133-lot.ts';
import { oimlPlan } from './oiml-constants.ts';
import { oimlLotSheet } from './oiml-lot.ts';
import { type DeficiencyRule, deficiencyRules, tolerableDeficiency } from './tolerable-deficiency.ts';
import { ukLotSheet } from './uk-lot.ts';

const verdictOf = (run: ReturnType<typeof runSheet>): unknown =>
  run.ok ? (run.value.outputs as { readonly verdict: string }).verdict : run.problems.map(({ code }) => code);

/** Fifty to 160 packages about half a litre. */
const packages = (most: number) =>
  fc.array(fc.double({ min: 480e-6, max: 520e-6, noNaN: true }), { minLength: most, maxLength: most });

describe('a tolerable deficiency', () => {
  it('never falls while the label rises', () => {
    const labels = Array.from({ length: 2000 }, (_, i) => 5e-6 + i * 4.9e-6);
    for (const rule of deficiencyRules) {
      const deficiencies = labels.map((label) => tolerableDeficiency(rule, label)!);
      // rounding up to a step can lift the lower side over the higher one by less than a step
      const step = rule === 'OIML R 87' ? 1e-6 : 1e-7;
      for (const [i, deficiency] of deficiencies.entries()) {
        if (i > 0) expect(deficiency).toBeGreaterThan(deficiencies[i - 1]! - step);
      }
    }
  });

  it('is not guessed beyond the table', () => {
    const beyond: readonly (readonly [DeficiencyRule, number])[] = [
      ['EU average system', 0.0101],
      ['UK average system', 4e-6],
      ['OIML R 87', 0.051],
    ];
    for (const [rule, label] of beyond) expect(tolerableDeficiency(rule, label)).toBeUndefined();
  });
});

/** One lot of each row of the table that begins with lots of 100. */
const oimlPlans = [500, 3200, 3201].map((lot) => oimlPlan('Australia', lot));

describe('the plans', () => {
  it('of OIML accept a lot at 2.5 and at 9 % defective as often as the binomial says', () => {
    // 50/3, 80/5, 125/7: computed apart from the plan, to three decimals
    const printed = [
      [0.964, 0.33],
      [0.985, 0.263],
      [0.986, 0.116],
    ];
    for (const [i, { sample, allowed }] of oimlPlans.entries()) {
      expect(binomialCdf(allowed, sample, 0.025)).toBeCloseTo(printed[i]![0]!, 2);
      expect(binomialCdf(allowed, sample, 0.09)).toBeCloseTo(printed[i]![1]!, 2);
    }
  });

  it('keep their confidences apart: 99.5 % of OIML, 97.5 % of Handbook 133', () => {
    for (const { sample, factor } of oimlPlans) {
      expect(Math.abs(factor - studentQuantile(0.995, sample - 1) / Math.sqrt(sample))).toBeLessThan(6e-4);
    }
    for (const { sample, factor } of handbookPlans.filter(({ sample }) => sample > 1)) {
      expect(Math.abs(factor - studentQuantile(0.975, sample - 1) / Math.sqrt(sample))).toBeLessThan(6e-4);
    }
  });
});

describe('a lot', () => {
  it('that is accepted stays accepted where the same volume is added to every package', () => {
    const judges = [
      (volumes: readonly number[]) =>
        runSheet(oimlLotSheet, { quantity: 5e-4, lotSize: 400, volumes: volumes.slice(0, 50) }),
      (volumes: readonly number[]) => runSheet(euLotSheet, { quantity: 5e-4, lotSize: 400, volumes }),
      (volumes: readonly number[]) =>
        runSheet(ukLotSheet, { quantity: 5e-4, lotSize: 400, plan: 'single', volumes }),
    ];
    fc.assert(
      fc.property(packages(60), fc.double({ min: 0, max: 2e-5, noNaN: true }), (volumes, added) =>
        judges.every(
          (judge) =>
            verdictOf(judge(volumes)) !== 'accept' ||
            verdictOf(judge(volumes.map((volume) => volume + added))) === 'accept',
        ),
      ),
      { numRuns: 60 },
    );
  });

  it('whose packages are all a hair over the label is accepted by every rule', () => {
    const volumes = Array.from({ length: 60 }, () => 500.01e-6);
    const gross = volumes.map((volume) => volume * 1000 + 0.3);
    expect(verdictOf(runSheet(oimlLotSheet, { quantity: 5e-4, lotSize: 400, volumes }))).toBe('accept');
    expect(verdictOf(runSheet(euLotSheet, { quantity: 5e-4, lotSize: 400, volumes }))).toBe('accept');
    expect(verdictOf(runSheet(ukLotSheet, { quantity: 5e-4, lotSize: 400, volumes }))).toBe('accept');
    const handbook = { quantity: 5e-4, lotSize: 400, gross, tares: [0.3], density: 1000, variation: 15e-6 };
    expect(verdictOf(runSheet(handbook133LotSheet, handbook))).toBe('accept');
  });

  it('judged by too few packages asks for the rest and not for a guess', () => {
    const run = runSheet(euLotSheet, { quantity: 5e-4, lotSize: 400, volumes: [502e-6, 501e-6] });
    expect(run.ok && run.value.outputs.more).toBe(28);
    expect(verdictOf(run)).toBe('take more');
  });

  it('is refused where more packages were drawn than it holds, or where it holds half a package', () => {
    const volumes = Array.from({ length: 12 }, () => 5e-4);
    expect(verdictOf(runSheet(ukLotSheet, { quantity: 5e-4, lotSize: 10, volumes }))).toEqual([
      'LOT_MORE_THAN_LOT',
    ]);
    expect(verdictOf(runSheet(ukLotSheet, { quantity: 5e-4, lotSize: 120.5, volumes }))).toEqual([
      'LOT_NOT_WHOLE',
    ]);
  });

  it('of fifty small defective ones under the EU rule is left open, since we hold no number for it', () => {
    const volumes = [480e-6, ...Array.from({ length: 49 }, () => 502e-6)];
    expect(verdictOf(runSheet(euLotSheet, { quantity: 5e-4, lotSize: 50, volumes }))).toBe('not decided');
    expect(verdictOf(runSheet(ukLotSheet, { quantity: 5e-4, lotSize: 50, volumes }))).toBe('accept');
  });
});
