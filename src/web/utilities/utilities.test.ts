import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook } from '../../book/index.ts';
import { barShape } from '../../floor/bar-shape.ts';
import { assessBook } from '../../floor/index.ts';
import type { UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { sheetEntries } from '../../sheets/registry.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { allWords } from '../words/all-words.ts';
import { utilitiesPageWords } from '../words/utilities-page.text.ts';
import { makeWords } from '../words/words.ts';
import { barFinding } from './bar-scale.ts';
import { countsOf, facingFigures, tieInGroups } from './grouped.ts';
import { marginText } from './margin-text.ts';
import { refusalSentences } from './refusal-text.ts';
import { sameAnswer } from './same-answer.ts';
import { tradeAt } from './trade-part.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const words = makeWords(allWords(sheetEntries, [utilityWords, utilitiesPageWords]), 'en');
const floorsOf = (book: Book) => assessBook(book).floors;
const [oxbow, larkmoor] = floorsOf(demo);
const show = { units: 'book' as const, book: demo };

const findings = [oxbow, larkmoor].flatMap((floor) => floor?.utilities.findings ?? []);

const figure = (value?: number, kind: 'temperature' | 'ratio' | 'current' | 'count' = 'current') => ({
  id: 'figure',
  kind,
  assumed: [],
  missing: [],
  ...(value === undefined ? {} : { value }),
});
const finding = (more: Partial<UtilityFinding>): UtilityFinding => ({
  id: 'feederAmpacity',
  question: 'feederAmpacity',
  utility: 'power',
  verdict: 'carries',
  sense: 'least',
  demand: figure(100),
  have: figure(130),
  ifSaid: false,
  causes: [],
  levers: [],
  notes: [],
  refusals: [],
  ...more,
});

describe('the rows of a trade', () => {
  it('hold every question of both floors once, and every figure', () => {
    for (const utility of ['air', 'power'] as const) {
      const ids = tieInGroups(utility, oxbow, larkmoor).flatMap(({ rows }) => rows.map(({ id }) => id));
      const wanted = new Set(findings.filter((one) => one.utility === utility).map(({ id }) => id));
      expect(ids).toHaveLength(wanted.size);
      expect(new Set(ids)).toEqual(wanted);
      expect(facingFigures(utility, oxbow, larkmoor).length).toBeGreaterThan(0);
    }
  });
  it('are counted as often as there are questions', () => {
    const { short, unknown, carries } = countsOf(larkmoor);
    expect(short + unknown + carries).toBe(larkmoor?.utilities.findings.length);
  });
  it('stay as they are when the book is worked out again, and follow a value that moves them', () => {
    const again = floorsOf(demo)[1]?.utilities.findings ?? [];
    const own = larkmoor?.utilities.findings ?? [];
    expect(again.every((one, i) => sameAnswer(one, own[i]))).toBe(true);
    const patched = patchBook(demo, [{ path: '/floors/1/air/coldest', value: '50 degF' }]);
    if (!patched.ok) throw new Error('the patch was refused');
    const warmer = floorsOf(patched.value)[1]?.utilities.findings ?? [];
    const moved = warmer.filter((one, i) => !sameAnswer(one, own[i])).map(({ id }) => id);
    expect(moved).toContain('airRoute');
    expect(moved).not.toContain('feederAmpacity');
  });
});

describe('the trade that is being written', () => {
  it('is the one whose part of a floor has the place; what the line says is every trade’s', () => {
    expect(tradeAt('/floors/1/air/coldest')).toBe('air');
    expect(tradeAt('/floors/0/room/route/2/width')).toBe('building');
    expect(tradeAt('/floors/1/supply/source/surface')).toBeUndefined();
    expect(tradeAt('/line/cylinders/0/bore')).toBeUndefined();
    expect(tradeAt(undefined)).toBeUndefined();
  });
});

describe('the bar of an answer', () => {
  it('draws a temperature by its distance from what is asked', () => {
    const cold = finding({
      verdict: 'short',
      demand: figure(276.15, 'temperature'),
      have: figure(271.15, 'temperature'),
    });
    const { hatched, tick } = barShape(barFinding(cold));
    // 5 K of the 25 K that fill the length up to the tick
    expect(hatched?.[1]).toBe(tick);
    expect((hatched?.[0] ?? 0) / (tick ?? 1)).toBeCloseTo(0.8, 6);
  });
  it('hatches words that do not meet words and dots what nobody knows', () => {
    const said = { demand: 'ISO 8573-1 [1:4:1]' };
    const words = { demand: figure(undefined, 'count'), have: figure(undefined, 'count'), said };
    expect(barShape(barFinding(finding({ ...words, verdict: 'short' }))).hatched).toBeDefined();
    expect(barShape(barFinding(finding({ ...words, verdict: 'unknown' }))).unknown).toBeDefined();
    expect(barShape(barFinding(finding({ ...words, verdict: 'carries' }))).hatched).toBeUndefined();
  });
  it('lets what is past a tolerance fall short of the tick', () => {
    const past = finding({ verdict: 'short', demand: figure(0, 'ratio'), have: figure(-0.02, 'ratio') });
    expect(barShape(barFinding(past)).hatched).toBeDefined();
    const left = finding({ demand: figure(0, 'ratio'), have: figure(0.02, 'ratio') });
    expect(barShape(barFinding(left)).hatched).toBeUndefined();
  });
});

describe('the margin of an answer', () => {
  it('is a difference for a temperature', () => {
    const row = finding({
      verdict: 'short',
      demand: figure(276.15, 'temperature'),
      have: figure(271.15, 'temperature'),
      gap: -5,
      margin: -0.018,
    });
    expect(marginText(words, row, show)).toMatch(/^5\sK missing$/);
    expect(marginText(words, row, { ...show, units: 'us' })).toMatch(/^9\s°F missing$/);
  });
  it('is a share else, and a multiple where there is plenty', () => {
    expect(marginText(words, finding({ gap: 30, margin: 0.3 }), show)).toMatch(/^30\s%\sto spare$/);
    const plenty = finding({ have: figure(900), gap: 800, margin: 8 });
    expect(marginText(words, plenty, show)).toBe('9 times what is asked');
    const hot = finding({ sense: 'most', verdict: 'short', have: figure(137), gap: -37, margin: -0.37 });
    expect(marginText(words, hot, show)).toMatch(/^37\s%\stoo much$/);
  });
  it('is left out where nothing is decided', () => {
    expect(marginText(words, finding({ verdict: 'unknown', gap: -1, margin: -0.01 }), show)).toBeUndefined();
  });
});

describe('what a sheet refuses', () => {
  it('is said in the units of the reader', () => {
    const refusal = {
      sheet: 'air/dryer-capacity',
      problems: [{ code: 'SHEET_RANGE', path: 'dewPoint', given: 274.15, allowed: '>= 276.15' }],
      places: ['/floors/1/air/dryer/dewPoint'],
    };
    const findSheet = (id: string) => sheetEntries.find(({ sheet }) => sheet.id === id)?.sheet;
    expect(refusalSentences(words, findSheet, refusal, show)).toMatch(/dew point.*"1\s°C".*≥ 3\s°C/i);
    expect(refusalSentences(words, findSheet, refusal, { units: 'us' })).toMatch(/33.8\s°F.*≥ 37.4\s°F/);
  });
});
