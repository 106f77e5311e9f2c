import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Patch, readBook, tryPatches } from '../../../book/index.ts';
import { judged } from '../testing/judged.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const on = (path: string, value: unknown): Patch => ({ path: `/floors/0/power/${path}`, value });
const declared = on('faultCurrent', { value: '6 kA', standing: 'measured' });
const step = (more: object = {}): Patch =>
  on('stepTransformer', {
    rating: '31.5 kVA',
    primary: '400 V',
    secondary: '400 V',
    impedance: '4 %',
    ...more,
  });
const fault = (...changes: readonly Patch[]) =>
  judged(tryPatches(demo.value, [declared, on('panelRating', '5 kA'), ...changes]), 'faultCurrent');

/** Four times the 8.9 A of the plates. */
const fedBack = 35.6;

it('a transformer at the line lets through what its impedance leaves', () => {
  expect(fault().verdict).toBe('short');
  const behind = fault(step());
  // 0.03830 + j0.00383 ahead, 0.05782 + j0.17347 of its own: 0.2017 ohm to 230.94 V, by hand
  expect(behind.have.value).toBeCloseTo(230.94 / 0.20168 + fedBack, 0);
  expect(behind.verdict).toBe('carries');
});

it('never more than an unlimited supply would give through it, at the least impedance where nobody says it', () => {
  const most = 31_500 / (Math.sqrt(3) * 400) / 0.9;
  const ample = on('faultCurrent', { value: '900 kA', standing: 'measured' });
  expect(fault(ample, step()).have.value).toBeCloseTo(most / 0.04 + fedBack, -1);
  const unsaid = fault(ample, step({ impedance: undefined }));
  expect(unsaid.have.value).toBeCloseTo(most / 0.02 + fedBack, -1);
  expect(unsaid.have.assumed).toContain('/floors/0/power/stepTransformer/impedance');
});

it('half the voltage behind the transformer is twice the current of the same power', () => {
  const ample = on('faultCurrent', { value: '900 kA', standing: 'measured' });
  const [whole, half] = ['400 V', '200 V'].map((secondary) => fault(ample, step({ secondary })).have.value!);
  // motors feed back twice as much at half the voltage only where their plates say so
  expect((half! - fedBack) / (whole! - fedBack)).toBeCloseTo(2, 1);
});
