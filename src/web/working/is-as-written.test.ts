import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { isAsWritten } from './is-as-written.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const as = (path: string, taken: number | string) => isAsWritten(demo.value, path, taken);

it('what a sheet took is what the book has, in whatever unit and with whatever standing', () => {
  expect(as('/floors/1/power/feeder/length', 480 * 0.3048)).toBe(true);
  expect(as('/floors/1/power/voltage', 208)).toBe(true);
  expect(as('/floors/1/air/compressor/startsPerHour', 20)).toBe(true);
  expect(as('/floors/1/power/earthing', 'solidly grounded wye')).toBe(true);
});

it('what was made of it is not, nor is what stands for a place that is empty', () => {
  expect(as('/floors/1/power/voltage', 480)).toBe(false);
  expect(as('/floors/1/air/compressor/startsPerHour', 20 / 3600)).toBe(false);
  expect(as('/floors/1/power/earthing', 'grounded-wye')).toBe(false);
  expect(as('/floors/1/power/feeder/parallel', 1)).toBe(false);
});
