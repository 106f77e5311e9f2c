import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeLot } from './judge-lot.ts';
import { lotText } from './lot.text.ts';
import type { WeighedLot, WeighedPackage } from './weighed-lot.ts';

const grams = (list: readonly number[]): readonly WeighedPackage[] =>
  list.map((gross) => ({ gross: gross / 1000 }));

/** Twelve half litres with two tares; the figures worked apart from this program, by the rules of the handbook. */
const twelve = [544.9, 541.2, 543, 546.3, 539.8, 542.7, 544.1, 540.5, 543.6, 541.9, 538.9, 542.2];
const handbook: WeighedLot = {
  rule: 'NIST Handbook 133',
  label: 5e-4,
  size: 200,
  packages: grams(twelve),
  tares: [0.0246, 0.0251],
  // weighed in air on the same balance: buoyancy cancels
  density: { value: 1037.5, temperature: 293.15, inAir: true },
  variation: 15e-6,
  tareSample: 2,
  edition: 'example of the test, no handbook',
};

const last = (lot: WeighedLot) => judgeLot(lot).steps.at(-1)!;

/** Bottles of Larkmoor juice: 500 mL at 20 degC weigh 522.5 g of true mass. */
const juice = (millilitres: readonly number[], extra: Partial<WeighedLot> = {}): WeighedLot => ({
  rule: 'EU average system',
  label: 5e-4,
  size: 400,
  packages: millilitres.map((each) => ({ gross: each * 1.0439 * 1e-3 + 0.32, tare: 0.32 })),
  density: { value: 1045, temperature: 293.15 },
  ...extra,
});
const many = (n: number, millilitres: number) => Array.from({ length: n }, () => millilitres);

const codes = (problems: readonly { readonly code: string }[]) => problems.map(({ code }) => code);

describe('a lot under Handbook 133', () => {
  it('passes inside its sample error limit: -1.1325 against 1.3125 mL, worked by hand', () => {
    const { verdict } = judgeLot(handbook);
    const { outputs } = last(handbook);
    expect(verdict).toBe('accept');
    expect(outputs.nominalGross).toBeCloseTo(0.5436, 7);
    expect(outputs.meanError as number).toBeCloseTo(-1.1325e-6, 9);
    expect(outputs.errorLimit as number).toBeCloseTo(1.3125e-6, 9);
  });

  it('fails on its average where all are 2.6 g lighter: -3.6386 mL, worked by hand', () => {
    const lighter = { ...handbook, packages: grams(twelve.map((each) => each - 2.6)) };
    expect(judgeLot(lighter).verdict).toBe('reject');
    expect(last(lighter).outputs.meanError as number).toBeCloseTo(-3.6386e-6, 9);
  });

  it('is not decided without the variation and its edition, and asks for both', () => {
    const { variation: _, edition: __, ...rest } = handbook;
    expect(judgeLot(rest).verdict).toBe('not decided');
    expect(codes(judgeLot(rest).missing)).toEqual(['LOT_VARIATION_MISSING', 'LOT_EDITION_MISSING']);
  });

  it('wants the number of tares that its table gives for their ratio, or all packages opened', () => {
    const { tareSample: _, tares: __, ...rest } = handbook;
    const opened = {
      ...rest,
      packages: grams(twelve).map((one, i) => (i < 2 ? { ...one, tare: 0.0246 + i / 2000 } : one)),
    };
    const [asked] = judgeLot(opened).missing;
    // 3.7 g over 0.5 g
    expect([asked!.code, asked!.allowed]).toEqual(['LOT_TARES_WANTED_MISSING', '7.40']);
    expect(codes(judgeLot({ ...opened, tareSample: 5 }).missing)).toEqual(['LOT_TARES_FEW']);
    expect(judgeLot({ ...opened, tareSample: 2 }).verdict).toBe('accept');
    const all = { ...rest, packages: grams(twelve).map((one) => ({ ...one, tare: 0.02485 })) };
    expect(judgeLot(all).verdict).toBe('accept');
    // in a sample under twelve those opened first are all
    expect(judgeLot({ ...opened, size: 9, packages: opened.packages.slice(0, 9) }).verdict).not.toBe(
      'not decided',
    );
  });

  it('is judged at 4.4 degC where the product is kept refrigerated, and wants its expansion for that', () => {
    const cold: WeighedLot = { ...handbook, product: 'refrigerated' };
    expect(codes(judgeLot(cold).missing)).toEqual(['LOT_EXPANSION_MISSING']);
    const known: WeighedLot = {
      ...cold,
      density: { value: 1037.5, temperature: 293.15, inAir: true, expansion: 3e-4 },
    };
    // denser when cold: the same weights are less volume
    expect(last(known).outputs.meanError as number).toBeLessThan(last(handbook).outputs.meanError as number);
  });

  it('is not read from a scale of 5 g, whose sixfold is over the variation', () => {
    const coarse = judgeLot({ ...handbook, scale: { division: 5e-3, capacity: 6 } });
    expect(coarse.verdict).toBe('not decided');
    expect(codes(coarse.missing)).toEqual(['LOT_SCALE_COARSE']);
    expect(judgeLot({ ...handbook, scale: { division: 1e-3, capacity: 6 } }).verdict).toBe('accept');
  });
});

describe('a lot under an average system', () => {
  it('of thirty good packages is accepted, of ten it asks for twenty more', () => {
    expect(judgeLot(juice(many(30, 502))).verdict).toBe('accept');
    const few = judgeLot(juice(many(10, 502)));
    expect([few.verdict, few.more]).toEqual(['take more', 20]);
  });

  it('takes contents from net weight with buoyancy: 521.95 g shown at 1045 kg/m3 are 500 mL', () => {
    const { steps } = judgeLot(juice(many(30, 500)));
    const volumes = steps.find(({ sheet }) => sheet === 'contents/package-volumes')!.outputs
      .volumes as readonly number[];
    // (521.95 g / 8000 x 1.2 + ...) by hand: m (1 - 1.2/8000)/(1045 - 1.2)
    expect(volumes[0]! * 1e6).toBeCloseTo((521.95 * (1 - 1.2 / 8000)) / 1.0438, 6);
  });

  it('is judged by its own rule alone: no step of one names another', () => {
    const sheets = (rule: WeighedLot['rule']) =>
      judgeLot(juice(many(60, 502), { rule })).steps.map(({ sheet }) => sheet);
    expect(sheets('EU average system').filter((id) => /oiml|uk-|handbook/.test(id))).toEqual([]);
    expect(sheets('UK average system').filter((id) => /oiml|eu-|handbook/.test(id))).toEqual([]);
    expect(sheets('OIML R 87').filter((id) => /uk-|eu-|handbook/.test(id))).toEqual([]);
  });

  it('stays the same whatever the temperature of the bottles: a mass does not change with it', () => {
    const warm = juice(many(30, 499), { density: { value: 1041, temperature: 303.15, expansion: 3.84e-4 } });
    const cool = juice(many(30, 499));
    const mean = (lot: WeighedLot) => last(lot).outputs.mean as number;
    // 1041 (1 + 3.84e-4 x 10) = 1044.997
    expect(mean(warm) / mean(cool)).toBeCloseTo(1045 / 1044.99744, 8);
  });

  it('names the agreed reference temperature where it is not that of the rule, and judges at the rule', () => {
    const judged = judgeLot(juice(many(30, 502), { agreedReference: 277.55 }));
    expect(judged.verdict).toBe('accept');
    expect(codes(judged.remarks)).toContain('LOT_REFERENCE_OTHER');
  });

  it('of fewer than 100 under OIML is left open with the reason', () => {
    const small = judgeLot(juice(many(30, 502), { rule: 'OIML R 87', size: 60 }));
    expect(small.verdict).toBe('not decided');
    expect(codes(small.problems)).toEqual(['LOT_OIML_SMALL']);
    const there = judgeLot(juice(many(12, 502), { rule: 'OIML R 87', size: 60, table: 'New Zealand' }));
    expect(there.verdict).toBe('accept');
    const plan = { sample: 12, factor: 0.826, allowed: 1 };
    const typed = juice(many(11, 502), { rule: 'OIML R 87', size: 60, typedPlan: plan });
    expect(codes(judgeLot(typed).missing)).toEqual(['LOT_PLAN_EDITION_MISSING']);
    const read = judgeLot({ ...typed, edition: 'example of the test' });
    expect([read.verdict, read.more]).toEqual(['take more', 1]);
  });
});

describe('bad input', () => {
  it('is named at its field: zero mass, tare above gross, negative tare', () => {
    const bad = judgeLot({
      ...juice([]),
      packages: [
        { gross: 0, tare: 0.3 },
        { gross: 0.3, tare: 0.8 },
        { gross: 0.8, tare: -0.3 },
      ],
    });
    expect(bad.verdict).toBe('not decided');
    expect(bad.problems.map(({ code, path }) => [code, path])).toEqual([
      ['LOT_MASS', 'packages/0/gross'],
      ['LOT_TARE_OVER_GROSS', 'packages/0/tare'],
      ['LOT_TARE_OVER_GROSS', 'packages/1/tare'],
      ['LOT_MASS', 'packages/2/tare'],
    ]);
  });

  it('of one package tells nothing of a lot', () => {
    const one = judgeLot(juice([502]));
    expect([one.verdict, codes(one.problems)]).toEqual(['not decided', ['LOT_ONE_PACKAGE']]);
  });

  it('without density, label, size or tare is asked for, all at once', () => {
    const bare = judgeLot({ rule: 'UK average system', packages: [{ gross: 0.8 }, { gross: 0.81 }] });
    expect(codes(bare.missing)).toEqual([
      'LOT_LABEL_MISSING',
      'LOT_SIZE_MISSING',
      'LOT_DENSITY_MISSING',
      'LOT_TARE_MISSING',
    ]);
  });

  it('of any kind gives a verdict or a reason, and never a figure that is none', () => {
    const number = fc.oneof(
      fc.double({ min: -1, max: 2, noNaN: true }),
      fc.constantFrom(0, -1, 1e9, Number.NaN, Number.POSITIVE_INFINITY),
    );
    const optional = fc.option(number, { nil: undefined });
    const lots = fc.record({
      rule: fc.constantFrom(
        ...(['NIST Handbook 133', 'OIML R 87', 'EU average system', 'UK average system'] as const),
      ),
      label: fc.option(fc.double({ min: -1e-4, max: 0.02, noNaN: true }), { nil: undefined }),
      size: fc.option(fc.constantFrom(-1, 0, 1, 12, 60, 200, 1e4, 10.5), { nil: undefined }),
      packages: fc.array(fc.record({ gross: number, tare: optional }), { maxLength: 60 }),
      tares: fc.array(number, { maxLength: 3 }),
      variation: optional,
      density: fc.oneof(
        fc.constant('water' as const),
        fc.record({ value: fc.double({ min: -1, max: 2000, noNaN: true }), temperature: optional }),
      ),
      edition: fc.constant('2026'),
    });
    fc.assert(
      fc.property(lots, (drawn) => {
        const judged = judgeLot(drawn as WeighedLot);
        const figures = judged.steps.flatMap(({ outputs }) => Object.values(outputs).flat());
        const explained =
          judged.verdict !== 'not decided' || judged.missing.length + judged.problems.length > 0;
        return explained && figures.every((each) => typeof each === 'string' || Number.isFinite(each));
      }),
      { numRuns: 300 },
    );
  });

  it('has words for every code that the judge names', () => {
    const seen = new Set<string>();
    for (const lot of [
      handbook,
      juice([502]),
      juice([], { rule: 'OIML R 87', size: 60 }),
      juice(many(30, 502), { plan: 'single', agreedReference: 277 }),
      juice(many(30, 502), { product: 'frozen' }),
      juice(many(30, 502), { density: { value: 1045 } }),
      juice(many(30, 502), { scale: { division: 1e-4 } }),
    ]) {
      const { missing, problems, remarks } = judgeLot(lot);
      for (const { code } of [...missing, ...problems, ...remarks]) seen.add(code);
    }
    expect([...seen].filter((code) => !Object.hasOwn(lotText.en, code))).toEqual([]);
    expect(seen.size).toBeGreaterThan(8);
  });
});
