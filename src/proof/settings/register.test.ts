import { describe, expect, it } from 'vitest';
import { type Book, readBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import { demo, demoWith, recorded, type Said } from '../testing/demo-proof.ts';
import { type RegisterRow, settingRegister } from './register.ts';
import { settingsOfBook } from './settings-of-book.ts';

const setAt = (setting: string, moment: string, value: string, floor = 'LARKMOOR'): Said => ({
  kind: 'setting',
  version: 1,
  body: { setting, floor, moment, value, by: 'the engineer' },
});

const registerOf = (said: readonly Said[], book: Book = demo) =>
  settingRegister(book, assessBook(book), recorded(said));

const rowOf = (said: readonly Said[], id: string, book: Book = demo): RegisterRow => {
  const found = registerOf(said, book).rows.find(({ row }) => row.id === id);
  if (found === undefined) throw new Error(`no row ${id}`);
  return found;
};

describe('the rows of the register', () => {
  it('come from the book by themselves: every counter, timer, dial, regulator, screw, sensor, guide and part', () => {
    const ids = settingsOfBook(demo).map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining([
        'preset -Y11 FLAGON-2L',
        'preset -Y14 FLAGON-2L',
        'dwell +WASH',
        'drip +FILL',
        'dump +WASH.Z2',
        'heater -E1',
        'temperature +WASH.Z3',
        'concentration +WASH.Z2',
        'frequency -M1',
        'parameters -M1',
        'overload -M2',
        'overload -M3',
        'regulator AIR-1',
        'throttleOut -C1',
        'throttleBack -C3',
        'sensor -B21',
        'guide +CONV FLAGON-2L',
        'changePart CP-1',
        'program',
        'backup',
      ]),
    );
    expect(new Set(ids).size).toBe(ids.length);
    // an output is not moved, a motor on an inverter has no relay dial, a heated zone has its thermostat
    for (const none of ['sensor -Y1', 'overload -M1', 'temperature +WASH.Z2'])
      expect(ids).not.toContain(none);
  });

  it('keep their ids whatever else the book gains, and stand at the stations', () => {
    const more = demoWith({
      path: '/line/drives/0',
      op: 'insert',
      value: { tag: '-M9', name: 'crate lift', station: '+TAKE' },
    });
    const before = settingsOfBook(demo).map(({ id }) => id);
    const after = settingsOfBook(more).map(({ id }) => id);
    expect(after.filter((id) => id !== 'overload -M9')).toEqual(before);
    expect(settingsOfBook(more).find(({ id }) => id === 'overload -M9')?.station).toBe('+TAKE');
  });

  it('take in what the book adds, with its unit, bounds and place', () => {
    const book = demoWith({
      path: '/line/settings',
      value: [
        {
          tag: 'SET-1',
          name: 'stop plate',
          on: '-C1',
          unit: 'mm',
          least: '40',
          most: '6 cm',
          value: '52 mm',
        },
        { tag: 'SET-2', on: '+FILL', of: 'lift', value: '0.5 s' },
      ],
    });
    const own = settingsOfBook(book).filter(({ sort }) => sort === 'own');
    expect(own.map(({ id, station, paths }) => [id, station, paths])).toEqual([
      ['SET-1', '+FILL', []],
      ['SET-2', '+FILL', ['/line/stations/4/lift']],
    ]);
    expect(own[0]?.range.least?.value).toBeCloseTo(0.04, 12);
    expect(own[0]?.range.most?.value).toBeCloseTo(0.06, 12);
  });
});

describe('a recorded setting', () => {
  it('is the last of its row and moment; a number without a unit takes that of its row', () => {
    const { at } = rowOf(
      [
        setAt('dwell +WASH', 'as left', '9.9'),
        setAt('dwell +WASH', 'as left', '9800 ms'),
        setAt('dwell +WASH', 'run-off', '10.2', 'OXBOW'),
      ],
      'dwell +WASH',
    );
    expect(at['as left']?.value).toBeCloseTo(9.8, 12);
    expect(at['run-off']).toMatchObject({ text: '10.2 s', value: 10.2 });
    expect(at.shipped).toBeUndefined();
  });

  it('that names no row, no floor, or can’t be read is told and takes the place of none', () => {
    const { problems, rows } = registerOf([
      setAt('dwell +OVEN', 'as left', '9 s'),
      setAt('dwell +WASH', 'as left', '9 s', 'ELSEWHERE'),
      setAt('dwell +WASH', 'shipped', '9 bar'),
    ]);
    expect(problems.map(({ code }) => code)).toEqual([
      'SETTING_UNKNOWN',
      'SETTING_FLOOR_UNKNOWN',
      'QUANTITY_WRONG_KIND',
    ]);
    const { at } = rows.find(({ row }) => row.id === 'dwell +WASH')!;
    expect(at['as left']).toBeUndefined();
    expect(at.shipped).toMatchObject({ text: '9 bar' });
    expect(at.shipped?.value).toBeUndefined();
  });
});

describe('the allowed range', () => {
  // NEC 2020, 430.32(A)(1): at most 115 % of the nameplate current without a marked service factor of 1.15 or a rise of
  // 40 degC, at most 125 % with it; memory
  it('of an overload dial is that of the rule set, by its sheet', () => {
    const { range } = rowOf([], 'overload -M2');
    expect(range.most?.value).toBeCloseTo(1.15 * 4.5, 9);
    expect(range.most?.working?.sheet).toBe('power/overload-setting');
    expect(range.least).toMatchObject({ text: '4 A', path: '/line/drives/1/overload/least' });
    const marked = demoWith({ path: '/line/drives/1/serviceFactor', value: 1.15 });
    expect(rowOf([], 'overload -M2', marked).range.most?.value).toBeCloseTo(1.25 * 4.5, 9);
  });

  it('of a relay that reaches less far is that of the relay', () => {
    const short = demoWith({ path: '/line/drives/1/overload/most', value: '5 A' });
    expect(rowOf([], 'overload -M2', short).range.most).toMatchObject({ text: '5 A' });
  });

  it('shows what lies beyond it, and lets the bound itself pass in any unit', () => {
    const beyond = (value: string) =>
      rowOf([setAt('overload -M2', 'as left', value)], 'overload -M2').at['as left']?.beyond;
    expect(beyond('5.3 A')).toBe('most');
    expect(beyond('3.9 A')).toBe('least');
    expect(beyond('5175 mA')).toBeUndefined();
    expect(beyond('4000 mA')).toBeUndefined();
  });

  // k V = N + k V_a - 1/2: a hand count from the mass balance, computed
  it('of a counter begins at the count that comes nearest to the level on the floor', () => {
    const { range } = rowOf([], 'preset -Y11 FLAGON-2L');
    const { afterRun, target, pulseDensity } = range.least!.working!.inputs as Record<string, number>;
    expect(target).toBeCloseTo(0.00201, 9);
    expect(range.least?.value).toBe(Math.round(pulseDensity! * (target! - afterRun!) + 0.5));
  });

  it('of a bath is what the rule for washing asks', () => {
    const ruled = demoWith({
      path: '/line/stations/1/zones/1/need',
      value: { rule: 'of the test', temperature: '60 degC', concentration: '1.2 %' },
    });
    expect(rowOf([], 'heater -E1', ruled).range.least?.value).toBeCloseTo(333.15, 9);
    expect(rowOf([], 'concentration +WASH.Z2', ruled).range.least?.value).toBeCloseTo(0.012, 12);
  });
});

describe('a register of three hundred rows', () => {
  const settings = Array.from({ length: 300 }, (_, i) => ({ tag: `SET-${i}`, unit: 'mm' }));
  const read = readBook({ twinfloor: 1, line: { settings }, floors: [{ tag: 'OXBOW', role: 'built on' }] });

  it('has them all beside those of the program', () => {
    expect(read.ok && settingsOfBook(read.value).length).toBe(302);
  });
});
