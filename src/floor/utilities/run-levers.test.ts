import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Book, readBook, tryPatches } from '../../book/index.ts';
import { bookReader } from '../book-reader.ts';
import { makeCalculation } from './calculation.ts';
import { inquiryOf } from './inquiry.ts';
import { needId } from './need.ts';
import { needsOf } from './needs-of.ts';
import { carrying } from './testing/judged.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const narrow = (length: string) => ({ kind: 'pipe', bore: '8 mm', length, material: 'drawn tubing' });
const strainer = { kind: 'valve', name: 'strainer', kv: '0.4 m3/h' };
const built = (path: string, run: readonly object[]): Book =>
  tryPatches(demo.value, [{ path: `/floors/0/${path}`, value: run }]);

const leversOf = (book: Book, finding: string) => {
  const need = needsOf(book, 0).find((each) => needId(each) === finding)!;
  return need.levers!(
    makeCalculation(bookReader(book), inquiryOf({ floor: 0, formatPath: '/line/formats/0' })),
  );
};

const runs: readonly (readonly [finding: string, book: Book])[] = [
  ['waterPressure T-WAT', built('water/run', [narrow('200 m'), strainer, narrow('200 m')])],
  ['airPressure AIR-1', built('air/run', [narrow('200 m'), strainer, narrow('200 m')])],
];

it.each(runs)(
  '%s: where no piece alone would do, the whole run of a size does, the least that does',
  (finding, book) => {
    const carries = carrying(book, finding);
    const levers = leversOf(book, finding);
    const pieces = levers.filter(({ path }) => /\/run\/\d+\//.test(path));
    const alone = pieces.filter(({ id }) => id !== 'runBore');
    expect(alone).toHaveLength(3);
    for (const lever of alone) {
      // the widest that can be had says it for all that are narrower
      expect(carries(lever.steps().at(-1)!.patches), lever.path).toBe(false);
    }
    const steps = pieces.find(({ id }) => id === 'runBore')!.steps();
    const first = steps.findIndex(({ patches }) => carries(patches));
    expect(first).toBeGreaterThan(0);
    expect(steps[first]!.patches).toHaveLength(3);
  },
);

it('what is wide enough already stays as it is', () => {
  const run = [narrow('25 m'), { ...narrow('25 m'), bore: '50 mm' }];
  const [whole] = leversOf(built('water/run', run), 'waterPressure T-WAT').filter(
    ({ id }) => id === 'runBore',
  );
  const steps = whole!.steps();
  expect(steps[0]!.patches.map(({ path }) => path)).toEqual(['/floors/0/water/run/0/bore']);
  expect(steps.at(-1)!.patches).toHaveLength(2);
});
