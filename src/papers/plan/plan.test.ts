import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { lineExtentSheet } from '../../sheets/building/line-extent.ts';
import { runSheet } from '../../sheets/frame.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printPreparation } from '../print-preparation.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, readPdf } from '../testing/read-pdf.ts';
import { cornersOf, placedSections } from './placed-sections.ts';
import { planContent } from './plan-content.ts';

const demo = bookOf(demoText);
const typesetter = makeTypesetter();
const wordsOf = (book: Book) => makePaperWords(book, bookUnits(book, undefined), 'en');
const { sections = [], tieIns = [] } = demo.line ?? {};
const withSections = (all: typeof sections): Book => ({ ...demo, line: { ...demo.line, sections: all } });

const read = (book: Book, page: 'a4' | 'letter' = 'a4') =>
  readPdf(
    printPreparation({ floor: 'Larkmoor', pages: [] }, { date, hash, page }, wordsOf(book), typesetter),
  );

describe('the plan', () => {
  it('reaches as far as the sheet of the line’s extent, whichever way a section is turned', () => {
    for (const turned of ['0 deg', '90 deg', '37 deg', '200 deg']) {
      const all = sections.map((one, i) => ({ ...one, turned: i === 0 ? turned : '0 deg' }));
      const placed = placedSections(withSections(all));
      const run = runSheet(lineExtentSheet, {
        x: placed.sections.map(({ corner }) => corner[0]),
        y: placed.sections.map(({ corner }) => corner[1]),
        lengths: placed.sections.map(({ length }) => length),
        widths: placed.sections.map(({ width }) => width),
        turned: placed.sections.map((one) => one.turned),
        clearances: placed.sections.map(({ clearance = 0 }) => clearance),
      });
      if (!run.ok) throw new Error(JSON.stringify(run.problems));
      const corners = placed.sections.flatMap((one) => cornersOf(one, one.clearance));
      const reach = (axis: 0 | 1): number =>
        Math.max(...corners.map((one) => one[axis])) - Math.min(...corners.map((one) => one[axis]));
      expect(reach(0)).toBeCloseTo(run.value.outputs.length, 9);
      expect(reach(1)).toBeCloseTo(run.value.outputs.width, 9);
    }
  });

  it('draws a metre as long as its scale says', () => {
    const plan = planContent(wordsOf(demo))!;
    const [first] = plan.sections;
    const [[x0], [x1]] = [first!.outline[0]!, first!.outline[1]!];
    // the washer is 3.4 m long
    expect(plan.scale).toBe('1:50');
    expect(x1 - x0).toBeCloseTo(3400 / 50, 9);
    expect(plan.bar).toEqual({ length: 40, text: '2\u00a0m' });
  });

  it('shows every tie-in point whose place is said, beside each other where they are close', () => {
    const plan = planContent(wordsOf(demo))!;
    expect(plan.points.map(({ tag }) => tag).sort()).toEqual(tieIns.map(({ tag }) => tag).sort());
    const tags = plan.points.map(
      ({ at: [x, y], to, step }) => `${to} ${Math.round(x / 13)} ${Math.round(y / 6)} ${step}`,
    );
    expect(new Set(tags).size).toBe(tags.length);
  });

  it('says what is not known: places, sizes and points, and guesses none', async () => {
    const [first, second] = sections;
    const { x: _, y: __, ...placeless } = first!;
    const { length: ___, ...sizeless } = second!;
    const { text } = await read(withSections([placeless, second!]));
    expect(text).toContain('does not say where every section stands');
    const without = planContent(wordsOf(withSections([first!, sizeless])))!;
    expect(without.sections).toHaveLength(1);
    expect(without.told.join(' ')).toContain('is not drawn: filler and capper');
    expect(without.told.join(' ')).toContain('T-PROD');
    expect(planContent(wordsOf({ twinfloor: 1 }))).toBeUndefined();
  });

  it.each(['a4', 'letter'] as const)(
    'stays within %s, however far apart or oddly named things are',
    async (page) => {
      const long = '#panic() '.repeat(40);
      const far = withSections(
        sections.map((one, i) => ({ ...one, name: long, x: `${i * 90} m`, y: '0 m', turned: '45 deg' })),
      );
      const pdf = await read(
        {
          ...far,
          line: { ...far.line, tieIns: tieIns.map((one) => ({ ...one, name: long, connection: long })) },
        },
        page,
      );
      expect(outside(pdf)).toEqual([]);
      expect(pdf.text).toContain('#panic()');
    },
  );
});
