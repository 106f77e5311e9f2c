import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../book/index.ts';
import { assessBook } from '../../../floor/index.ts';
import { judgeResult, type PlannedCheck, placesOfBook, proofOfBook, restsOn } from '../../../proof/index.ts';
import { proofProblemText } from '../../../proof/problems.text.ts';
import { proofText } from '../../../proof/proof.text.ts';
import { members } from '../../../record/body-shape.ts';
import { checkParts } from '../../../record/record-bodies.ts';
import { keepNotes } from '../../state/kept-notes.ts';
import { allWords } from '../../words/all-words.ts';
import { proofRunWords } from '../../words/proof-run.text.ts';
import { makeWords } from '../../words/words.ts';
import { barScale, placeOn } from './bar-scale.ts';
import { lapWatch } from './laps.ts';
import { lastReads } from './last-reads.ts';
import { readingFigures } from './reading-figures.ts';
import { restoredRun } from './restored-run.ts';
import { runBody } from './run-body.ts';
import { emptyRun, forgetRun, keepRun, keptRun, type RunDraft } from './run-draft.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const proof = proofOfBook(demo, assessBook(demo));
const words = (locale = 'en') =>
  makeWords(allWords([], [proofText, proofProblemText, proofRunWords]), locale);
const units: Readonly<Record<string, string>> = { gaugePressure: 'psi', volume: 'L', time: 's' };

const checkOf = (floor: string, id: string): PlannedCheck => {
  const found = proof.floors
    .find((one) => one.floor === floor)
    ?.checks.find(({ check }) => check.id === id)?.check;
  if (found === undefined) throw new Error(`no check ${id}`);
  return found;
};

const made = (check: PlannedCheck, draft: Partial<RunDraft>, locale = 'en') =>
  runBody(
    words(locale),
    { ...emptyRun, texts: { ...emptyRun.texts, by: 'the engineer' }, ...draft },
    {
      check,
      floor: 'LARKMOOR',
      basis: placesOfBook(demo).basis(restsOn(check)),
      unitOf: (kind) => units[kind] ?? '1',
    },
  );

const level = checkOf('LARKMOOR', 'fillLevel -Y11');
const stop = checkOf('LARKMOOR', 'effect -S1 -M1');
const atSite = { manifoldPressure: '2.4', product: 'JUICE', lineAtIndex: 'yes', bottles: 'yes' };
const four = ['2.013 L', '2.012 L', '2.014 L', '2.011 L'];

describe('a check out of what stands in the fields', () => {
  it('is a record of its kind, the last reading taken from its field, bare numbers with their unit', () => {
    const { body, wrong, missing } = made(level, {
      readings: four,
      reading: '2.013',
      conditions: atSite,
      texts: { ...emptyRun.texts, by: ' the engineer ', witness: 'the plant manager', remark: ' ' },
    });
    expect([wrong, missing]).toEqual([{}, {}]);
    expect(members(checkParts.needed, checkParts.optional)(body, '')).toEqual([]);
    expect(body.readings).toEqual([...four, '2.013 L']);
    expect(body.conditions?.[0]).toEqual({ condition: 'manifoldPressure', read: '2.4 psi' });
    expect([body.by, body.witness, body.remark]).toEqual(['the engineer', 'the plant manager', undefined]);
    expect(judgeResult(level, { ...body, id: 'r', at: '2027-04-19T09:00:00Z' }, '').verdict).toBe('proved');
  });

  it('keeps what does not read out of the body and says it at its field, while the rest is judged', () => {
    const { body, wrong } = made(level, {
      readings: four,
      reading: '2.013 bar',
      conditions: { ...atSite, manifoldPressure: 'a lot' },
    });
    expect(Object.keys(wrong).sort()).toEqual(['condition manifoldPressure', 'reading']);
    expect(body.readings).toEqual(four);
    const { verdict, shortfalls } = judgeResult(level, { ...body, id: 'r', at: '' }, '');
    expect([verdict, shortfalls]).toEqual(['shown', ['unread', 'few']]);
  });

  it('says at its field that a volume can’t be below zero', () => {
    const { body, wrong } = made(level, { readings: four, reading: '-2.013', conditions: atSite });
    expect(body.readings).toEqual(four);
    expect(wrong.reading).toMatch(/^-2\.013 L is below zero/);
  });

  it('is read by the marks of the language', () => {
    const { body } = made(level, { reading: '2,013', conditions: { manifoldPressure: '2,4' } }, 'de');
    expect([body.readings, body.conditions?.[0]?.read]).toEqual([['2.013 L'], '2.4 psi']);
  });

  it('says what is missing: who, what was seen, and all of a thing that was begun', () => {
    const nobody = made(stop, { texts: emptyRun.texts });
    expect(Object.keys(nobody.missing).sort()).toEqual(['by', 'seen']);
    const half = made(stop, { seen: false, texts: { ...emptyRun.texts, by: 'x', why: 'spare on order' } });
    expect(Object.keys(half.missing).sort()).toEqual(['accepter', 'until']);
    expect(half.body.concession).toBeUndefined();
  });

  it('that is awaited needs no reading', () => {
    const late = { what: 'rinse water', who: 'the laboratory', due: '2027-04-26' };
    const { body, missing } = made(checkOf('LARKMOOR', 'rinseResidue +WASH.Z4'), {
      texts: { ...emptyRun.texts, by: 'x', ...late },
    });
    expect([missing, body.late]).toEqual([{}, late]);
  });
});

const storage = (): Storage => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  } as Storage;
};

describe('what stands in the fields', () => {
  const of = { book: 'b', floor: 'OXBOW', check: 'fillLevel -Y11' };
  const draft: RunDraft = {
    ...emptyRun,
    reading: '2.01',
    readings: ['2.013 L'],
    conditions: { manifoldPressure: '0.8' },
    texts: { ...emptyRun.texts, witness: 'the plant manager', remark: 'foam' },
    attached: [{ sha256: 'a'.repeat(64), mediaType: 'image/png', bytes: 70 }],
  };

  it('stays over a reload, each check for itself; written down, the witness alone goes on', () => {
    const local = storage();
    const page = () => ({ notes: keepNotes({ local, changes: new EventTarget() }) });
    keepRun(page(), of, draft);
    expect(keptRun(page(), of)).toEqual(draft);
    expect(keptRun(page(), { ...of, check: 'fillLevel -Y12' })).toEqual(emptyRun);
    forgetRun(page(), of, draft);
    expect(keptRun(page(), of)).toEqual({
      ...emptyRun,
      texts: { ...emptyRun.texts, witness: 'the plant manager' },
    });
  });

  it('is nothing where another program wrote', () => {
    const page = { notes: keepNotes({ local: storage(), changes: new EventTarget() }) };
    page.notes.write('proof-run/b/OXBOW/fillLevel -Y11', {
      readings: [1, '2 L'],
      seen: 'yes',
      attached: [{}],
    });
    expect(keptRun(page, of)).toEqual({ ...emptyRun, readings: ['2 L'] });
  });

  it('comes back as it was written when a try is corrected', () => {
    const { body } = made(level, { readings: four, conditions: atSite });
    const tried = judgeResult(level, { ...body, id: 'r7', at: '2027-04-19T09:00:00Z' }, '');
    const again = restoredRun(tried);
    expect(again.corrects).toBe('r7');
    expect(made(level, again).body).toEqual(body);
  });
});

describe('readings', () => {
  it('of a watch are the times between taps; after a stop the next tap is a first one', () => {
    let now = 1000;
    const watch = lapWatch(() => now);
    const tapAt = (ms: number) => {
      now = ms;
      return watch.tap();
    };
    expect([tapAt(1000), tapAt(14_200), tapAt(27_600)]).toEqual([undefined, 13.2, 13.4]);
    watch.stop();
    expect([tapAt(60_000), tapAt(73_500)]).toEqual([undefined, 13.5]);
  });

  it('give their mean with its interval: NIST/SEMATECH e-Handbook, 1.3.5.2 and table 1.3.6.7.2 (memory)', () => {
    // mean 13.3, s 0.1; Student's 97.5 % of two degrees of freedom is 4.303
    const { spread } = readingFigures(['13.2 s', '13.3 s', '13400 ms'], 'time');
    expect(spread?.mean).toBeCloseTo(13.3, 9);
    expect(spread?.spread).toBeCloseTo(0.1, 9);
    expect(spread?.meanLow).toBeCloseTo(13.3 - (4.303 * 0.1) / Math.sqrt(3), 4);
    expect(spread?.meanHigh).toBeCloseTo(13.3 + (4.303 * 0.1) / Math.sqrt(3), 4);
    expect(spread?.working.sheet).toBe('contents/time-spread');
    expect(readingFigures(['4.4 A', '4.5 A'], 'current')).toEqual({ values: [4.4, 4.5] });
    expect(readingFigures(['13.2 s'], 'time').spread).toBeUndefined();
  });

  it('of a condition are offered again, the newest of any check of the floor', () => {
    const tried = (check: PlannedCheck, at: string, conditions: Readonly<Record<string, string>>) => {
      const { body } = made(check, { readings: four, conditions });
      const judged = judgeResult(check, { ...body, id: at, at }, '');
      return { check, state: judged.verdict, inForce: judged, earlier: [], changed: [] };
    };
    const last = lastReads([
      tried(level, '2027-04-19T09:30:00Z', { manifoldPressure: '2.4', product: 'JUICE' }),
      tried(checkOf('LARKMOOR', 'fillLevel -Y12'), '2027-04-19T09:12:00Z', {
        manifoldPressure: '2.2',
        bottles: 'yes',
      }),
    ]);
    expect(last.get('manifoldPressure')).toEqual({ read: '2.4 psi', at: '2027-04-19T09:30:00Z' });
    expect(last.get('bottles')).toEqual({ read: 'yes', at: '2027-04-19T09:12:00Z' });
  });
});

describe('the bar of a reading', () => {
  const limit = (value: number, kind: 'volume' | 'temperature' = 'volume') => ({
    sense: 'least' as const,
    figure: { id: 'x', kind, value, assumed: [], missing: [] },
  });

  it('begins at nothing where a reading is far off, and is cut where all lie near the limit', () => {
    expect(barScale(limit(2), [0.4])).toMatchObject({ low: 0, cut: false });
    const near = barScale(limit(2.01), [2.013, 2.011]);
    expect(near).toMatchObject({ cut: true });
    expect(placeOn(near!, 2.01)).toBeCloseTo(0.5, 9);
    expect(placeOn(near!, 2.013)).toBeGreaterThan(0.5);
    expect(placeOn(near!, 9)).toBe(1);
  });

  it('of a temperature never begins at absolute nothing', () => {
    const scale = barScale(limit(335.15, 'temperature'), [333.15]);
    expect(scale?.cut).toBe(true);
    expect(scale?.low).toBeGreaterThan(300);
    const unknown = { id: 'x', kind: 'volume' as const, assumed: [], missing: [] };
    expect(barScale({ sense: 'least', figure: unknown }, [1])).toBeUndefined();
  });
});
