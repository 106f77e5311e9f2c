import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, pointerOf, readBook, tryPatches } from '../book/index.ts';
import { anyBook } from '../book/testing/any-book.ts';
import { type Assessment, assessBook, type FloorAssessment, figureKinds } from './index.ts';

const read = (path: string): Book => {
  const result = readBook(readFileSync(path, 'utf8'));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const demo = read('src/book/demo/flagon-line.json');
const floorOf = (assessment: Assessment, tag: string): FloorAssessment =>
  assessment.floors.find((floor) => floor.floor === tag)!;
const findingOf = (floor: FloorAssessment, id: string) =>
  floor.findings.find((finding) => finding.id === id)!;

/** Every number anywhere in an answer. */
const numbersIn = (value: unknown, at: string, out: [string, number][] = []): [string, number][] => {
  if (typeof value === 'number') out.push([at, value]);
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) numbersIn(inner, `${at}/${key}`, out);
  }
  return out;
};

const soundOf = (assessment: Assessment): void => {
  const odd = numbersIn(assessment, '').filter(([, n]) => !Number.isFinite(n));
  expect(odd).toEqual([]);
  for (const floor of assessment.floors) {
    for (const lane of floor.lanes) {
      expect(lane.flowAllOpen).toBeGreaterThanOrEqual(0);
      expect(lane.volume).toBeGreaterThanOrEqual(0);
    }
    for (const finding of floor.findings) {
      expect(['carries', 'short', 'unknown']).toContain(finding.verdict);
      if (finding.have.value === undefined || finding.demand.value === undefined) {
        expect(finding.verdict).toBe('unknown');
      }
    }
  }
};

/** Places of every value in the book, leaves and branches. */
const placesIn = (value: unknown, steps: readonly string[] = []): string[] => {
  if (typeof value !== 'object' || value === null) return [pointerOf(steps)];
  return [
    ...(steps.length > 0 ? [pointerOf(steps)] : []),
    ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...steps, key])),
  ];
};

describe('the demonstration', () => {
  const assessment = assessBook(demo);
  const oxbow = floorOf(assessment, 'OXBOW');
  const larkmoor = floorOf(assessment, 'LARKMOOR');

  it("holds the washer by the fill on the builder's floor, which is far from the agreed rate", () => {
    expect(oxbow.hold?.by).toBe('fill');
    expect(oxbow.hold!.waits).toBeGreaterThan(3);
    expect(findingOf(oxbow, 'runningRate').verdict).toBe('short');
    expect(findingOf(oxbow, 'runningRate').margin).toBeLessThan(-0.2);
  });
  it('is short at the site too, by little', () => {
    const finding = findingOf(larkmoor, 'runningRate');
    expect(finding.verdict).toBe('short');
    expect(finding.margin).toBeGreaterThan(-0.15);
  });
  it('carries at the site once the strainer is changed for a larger one', () => {
    const changed = tryPatches(demo, [{ path: '/floors/1/supply/run/1/kv/value', value: 'Kv 16' }]);
    const site = floorOf(assessBook(changed), 'LARKMOOR');
    expect(
      site.findings.filter((finding) => finding.verdict !== 'carries').map((finding) => finding.id),
    ).toEqual([]);
  });
  it('gives every figure that has a value and is computed a working that shows that value', () => {
    for (const floor of assessment.floors) {
      for (const figure of Object.values(floor.figures)) {
        if (figure.value === undefined || figure.working === undefined || figure.output === undefined)
          continue;
        const shown = floor.workings[figure.working]!.outputs[figure.output];
        expect([figure.id, shown]).toEqual([
          figure.id,
          expect.closeTo(figure.value, figure.kind === 'gaugePressure' ? 3 : 8),
        ]);
      }
    }
  });
  it('leaves next to nothing over where an answer was found by iteration', () => {
    for (const working of assessment.floors.flatMap((floor) => floor.workings)) {
      if (working.residual === undefined) continue;
      const scale = Math.max(
        ...Object.values(working.outputs).map((v) => (typeof v === 'number' ? Math.abs(v) : 0)),
      );
      expect(Math.abs(working.residual)).toBeLessThan(1e-6 * Math.max(1, scale));
    }
  });
  it('names the finding that a lower rate, not another unit, would change', () => {
    const psi = tryPatches(demo, [{ path: '/line/stations/4/manifoldRating', value: '87.0226 psi' }]);
    expect(findingOf(floorOf(assessBook(psi), 'OXBOW'), 'surge').margin).toBeCloseTo(
      findingOf(oxbow, 'surge').margin!,
      4,
    );
  });
});

describe('laws of a floor', () => {
  const rate = (book: Book, floor: string): number =>
    floorOf(assessBook(book), floor).figures.runningRate!.value!;
  const at = (path: string, value: unknown): Book => tryPatches(demo, [{ path, value }]);

  it('a higher surface never makes the line slower', () => {
    let last = 0;
    for (let tenth = 20; tenth < 90; tenth += 5) {
      const now = rate(at('/floors/0/supply/source/surface/value', `${tenth / 10} m`), 'OXBOW');
      expect(now).toBeGreaterThanOrEqual(last * (1 - 1e-9));
      last = now;
    }
  });
  it('a wider hose never makes the line slower', () => {
    let last = 0;
    for (let bore = 10; bore < 120; bore += 10) {
      const now = rate(at('/floors/0/supply/run/1/bore', `${bore} mm`), 'OXBOW');
      expect(now).toBeGreaterThanOrEqual(last * (1 - 1e-9));
      last = now;
    }
  });
  it('the washer alone is the ceiling of the rate', () => {
    const high = at('/floors/0/supply/source/surface/value', '60 m');
    const floor = floorOf(assessBook(high), 'OXBOW');
    expect(floor.figures.runningRate!.value).toBeCloseTo(1200 / 3600, 12);
    expect(floor.hold?.by).toBe('washer');
    expect(floor.hold?.waits).toBe(0);
  });
  it('a bore in inches gives what the same bore in millimetres gives', () => {
    expect(rate(at('/floors/0/supply/run/1/bore', '25.4 mm'), 'OXBOW')).toBe(rate(demo, 'OXBOW'));
  });
  it('a tank that gets no water runs dry within the hour and the line stands', () => {
    const floor = floorOf(assessBook(at('/floors/0/supply/source/makeUp', '0 L/min')), 'OXBOW');
    expect(floor.figures.runDryAfter!.value).toBeGreaterThan(0);
    expect(floor.figures.hourRate!.value).toBeLessThan(floor.figures.runningRate!.value!);
    expect(findingOf(floor, 'tankLevel').verdict).not.toBe('carries');
    expect(findingOf(floor, 'makeUp').verdict).toBe('short');
  });
  it('a wider spread of a value never makes a verdict surer', () => {
    const floor = (spread: string) =>
      findingOf(
        floorOf(assessBook(at('/floors/1/supply/source/surface/spread', spread)), 'LARKMOOR'),
        'runningRate',
      );
    expect(floor('0.01 m').verdict).toBe('short');
    expect(floor('1.5 m').verdict).toBe('unknown');
    expect(floor('1.5 m').decides).toBe('/floors/1/supply/source/surface');
  });
});

describe('a floor that has not answered', () => {
  it('gives unknown findings that name a place for each source that is left out', () => {
    const empty = tryPatches(demo, [{ path: '/floors/1/supply', value: undefined }]);
    const floor = floorOf(assessBook(empty), 'LARKMOOR');
    const finding = findingOf(floor, 'runningRate');
    expect(finding.verdict).toBe('unknown');
    expect(finding.decides).toBe('/floors/1/supply/source');
    expect(findingOf(floor, 'washerRate').verdict).toBe('carries');
  });
  it('never fails for a value left out', () => {
    // every sixty-first place: the demo book has many, and each is a whole assessment
    for (const path of placesIn(demo).filter((_, i) => i % 61 === 0)) {
      const without = tryPatches(demo, [{ path, value: undefined }]);
      if (readBook(without).ok) soundOf(assessBook(without));
    }
  });
  it('marks what was assumed', () => {
    const book = tryPatches(demo, [{ path: '/line/stations/4/lanes/0/closing', value: undefined }]);
    expect(floorOf(assessBook(book), 'OXBOW').figures.leastVolume!.assumed).toContain(
      '/line/stations/4/lanes/0/closing',
    );
  });
});

describe('any book', () => {
  it('is assessed without a failure, a number that is none, or a negative flow', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        soundOf(assessBook(book as Book));
      }),
      { numRuns: 150, seed: 20270308 },
    );
  });
  it('gives every figure that the catalogue of figures names', () => {
    const floor = assessBook(demo).floors[0]!;
    expect(Object.keys(floor.figures).sort()).toEqual(Object.keys(figureKinds).sort());
  });
});

describe('the examples', () => {
  for (const name of readdirSync('examples').filter((each) => each.endsWith('.json'))) {
    it(`${name} is assessed`, () => {
      soundOf(assessBook(read(`examples/${name}`)));
    });
  }
});
