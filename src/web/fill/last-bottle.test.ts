import { describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { readBook } from '../../book/index.ts';
import { bookReader } from '../../floor/book-reader.ts';
import { fillFloor } from '../../floor/fill/fill-floor.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import { lastBottle, type ReadAlone } from './last-bottle.ts';

const demo = readBook(demoText);
if (!demo.ok) throw new Error('the demo book does not read');
const reader = bookReader(demo.value);
const floor = fillFloor(reader, 0);

const bottle = (id: string, volume: string, more: Partial<RecordedTrial> = {}): RecordedTrial => ({
  id,
  floor: 'OXBOW',
  lane: '-Y11',
  preset: 803,
  overflow: 'none',
  volume,
  ...more,
});
const said = (...trials: readonly RecordedTrial[]) => lastBottle(reader, floor, trials);

describe('the bottle that was written down last', () => {
  it('is held against the others of its lane at its count', () => {
    const found = said(
      bottle('1', '2.001 L'),
      bottle('2', '2.003 L'),
      bottle('3', '1.2 L', { preset: 480 }),
      bottle('4', '2.1 L', { lane: '-Y12' }),
      bottle('5', '2.5 L', { afterStop: true }),
      bottle('6', '2.008 L'),
    )!;
    // 2.008 against the mean of 2.001 and 2.003; 2.004 is the mean of all three
    expect(found.off! * 1e6).toBeCloseTo(6, 6);
    expect(found.mean! * 1e6).toBeCloseTo(2004, 6);
    expect(found.bottles).toBe(3);
    expect(found.level! * 1e6).toBeCloseTo(2010, 6);
  });

  it('is alone where it is the first, and says only that it got as much where it ran over', () => {
    expect(said(bottle('1', '2.001 L'))).not.toHaveProperty('off');
    const over = said(bottle('1', '2.001 L'), bottle('2', '2.012 L', { overflow: 'trace' }))!;
    expect(over).toMatchObject({ overflowed: true, bottles: 1 });
    expect(over).not.toHaveProperty('off');
  });

  it('says the same where the others were read before', () => {
    const trials = [
      bottle('1', '2.001 L'),
      bottle('2', '2.003 L'),
      bottle('3', 'so much'),
      bottle('4', '2.010 L'),
    ];
    const alone: ReadAlone = new Map();
    for (let n = 1; n <= trials.length; n++) {
      const some = trials.slice(0, n);
      expect(lastBottle(reader, floor, some, alone)).toEqual(said(...some));
    }
    expect(alone.size).toBe(trials.length);
  });

  it('takes the empty bottle of the others where its own was not weighed', () => {
    const { volume: _, ...unweighed } = bottle('3', '');
    const tares = ['0.955 kg', '0.965 kg'].map((tare, i) =>
      bottle(String(i), '2 L', { lane: '-Y12', gross: '2.97 kg', tare }),
    );
    const found = said(...tares, { ...unweighed, gross: '2.96 kg', temperature: '20 degC' })!;
    // 2.000 kg of water at 20 degC in air: 1.00283 L a kilogram (ISO 8655-6 form, 1.2 kg/m3)
    expect(found.volume * 1e6).toBeCloseTo(2005.7, 0);
    expect(said(...tares.slice(1), { ...unweighed, gross: '2.96 kg' })).toBeUndefined();
  });
});
