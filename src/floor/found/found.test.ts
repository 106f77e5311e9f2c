import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook, tryPatches, valueAt } from '../../book/index.ts';
import { assessBook } from '../assess-book.ts';
import { bookAsFound, type FoundReading, onTemporarySupply, promisedAndFound } from './index.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;

const reading = (of: string, value: string, more: Partial<FoundReading> = {}): FoundReading => ({
  floor: 'LARKMOOR',
  of,
  value,
  by: 'the engineer',
  at: '2027-04-19T09:10:00Z',
  instrument: 'class 0.6 gauge',
  users: 2,
  ...more,
});

describe('a book as found', () => {
  it('has the reading as measured, by whom and on which day, and leaves the promise in the book', () => {
    const { book, laid, refused } = bookAsFound(demo, [
      reading('air/compressor/cutIn', '71 psi', { spread: '1 psi' }),
    ]);
    expect(refused).toEqual([]);
    expect(laid.map(({ path }) => path)).toEqual(['/floors/1/air/compressor/cutIn']);
    expect(valueAt(book, '/floors/1/air/compressor/cutIn')).toEqual({
      value: '71 psi',
      spread: '1 psi',
      standing: 'measured',
      by: 'the engineer',
      on: '2027-04-19',
    });
    expect(valueAt(demo, '/floors/1/air/compressor/cutIn/value')).toBe('88 psi');
  });
  it('takes the latest of several readings, whatever the order in which they come', () => {
    const late = reading('water/temperature', '9 degC', { at: '2027-04-20T07:00:00Z' });
    const early = reading('water/temperature', '14 degC');
    for (const readings of [
      [late, early],
      [early, late],
    ]) {
      const { book } = bookAsFound(demo, readings);
      expect(valueAt(book, '/floors/1/water/temperature/value')).toBe('9 degC');
    }
  });
  it('compares moments, not how their zones are written', () => {
    const late = reading('water/temperature', '9 degC', { at: '2027-04-19T08:00:00-05:00' });
    const early = reading('water/temperature', '14 degC', { at: '2027-04-19T09:10:00Z' });
    const { book } = bookAsFound(demo, [late, early]);
    expect(valueAt(book, '/floors/1/water/temperature/value')).toBe('9 degC');
  });
  it('says of a word what the place takes, not that it is no quantity', () => {
    const { laid, refused } = bookAsFound(demo, [
      reading('power/earthing', 'IT'),
      reading('heat/kind', 'coal'),
    ]);
    expect(laid.map(({ path }) => path)).toEqual(['/floors/1/power/earthing']);
    expect(refused[0]!.problems[0]!.allowed).toContain('electric');
  });
  it('says which readings fit nowhere, and lays the others', () => {
    const { laid, refused } = bookAsFound(demo, [
      reading('air/compressor/cutIn', '71 psi'),
      reading('air/compressor/cutIn2', '71 psi'),
      reading('power/voltage', 'about two hundred'),
      reading('power/frequency', '60 Hz', { floor: 'NOWHERE' }),
    ]);
    expect(laid.length).toBe(1);
    expect(refused.map((each) => each.reading.of)).toEqual([
      'power/frequency',
      'air/compressor/cutIn2',
      'power/voltage',
    ]);
    for (const { problems } of refused) expect(problems.length).toBeGreaterThan(0);
  });
  it('is assessed on a temporary supply where a floor has one', () => {
    const before = assessBook(demo).floors[1]!.figures.runningRate!.value!;
    const low = tryPatches(demo, [
      {
        path: '/floors/1/temporarySupply',
        value: { ...demo.floors![1]!.supply, source: { ...demo.floors![0]!.supply!.source } },
      },
    ]);
    expect(assessBook(low).floors[1]!.figures.runningRate!.value).toBeCloseTo(before, 9);
    expect(assessBook(onTemporarySupply(low)).floors[1]!.figures.runningRate!.value).toBeLessThan(before);
  });
});

describe('promised and found', () => {
  it('tells a difference from a reading within what was promised', () => {
    const [weak, same] = promisedAndFound(demo, [
      reading('air/compressor/cutIn', '60 psi', { spread: '1 psi' }),
      reading('power/frequency', '60 Hz'),
    ]);
    expect(weak!.path).toBe('/floors/1/air/compressor/cutIn');
    expect(weak!.differs).toBe(true);
    expect(weak!.owner).toBe('site');
    expect(weak!.who).toBe('Larkmoor, maintenance');
    expect(same!.differs).toBe(false);
    expect(same!.shifts).toEqual([]);
  });
  it('says what the difference does: air too weak turns its findings and slows the index', () => {
    const [weak] = promisedAndFound(demo, [reading('air/compressor/cutIn', '60 psi', { spread: '1 psi' })]);
    const turned = weak!.shifts.filter(({ from, to }) => from !== to).map(({ id }) => id);
    expect(turned).toContain('airPressure AIR-1');
    expect(weak!.shifts.find(({ id }) => id === 'airPressure AIR-1')!.touches).toBe('margin');
    expect(weak!.shifts.find(({ id }) => id === 'washerRate')!.touches).toBe('washing');
    expect(weak!.shifts.find(({ id }) => id === 'washerRate')!.marginTo).toBeLessThan(
      weak!.shifts.find(({ id }) => id === 'washerRate')!.marginFrom!,
    );
  });
});
