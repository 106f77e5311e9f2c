import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSheet, type Sheet } from '../frame.ts';
import { mixedTemperature, temperingFlow } from './drain-mix.ts';
import { heatEntries } from './entries.ts';
import { waterVolume } from './if97.ts';
import { evaporationHeat } from './open-tank-evaporation.ts';
import { tableEnd, tableLoss, tableStart } from './open-tank-table.ts';
import { steamHeat } from './steam-need.ts';

const sheets = new Map<string, Sheet>(heatEntries.map(({ sheet }) => [sheet.id, sheet]));
const cases = new Map(heatEntries.map(({ sheet, cases: all }) => [sheet.id, all]));

/** The first case of a sheet with something wrong in it: codes and fields of what comes back. */
const spoiled = (id: string, wrong: Readonly<Record<string, unknown>>): [string, string][] => {
  const run = runSheet(sheets.get(id)!, { ...cases.get(id)![0]!.inputs, ...wrong });
  return run.ok ? [] : run.problems.map(({ code, path }) => [code, path]);
};

const celsius = (least: number, most: number) =>
  fc.double({ min: 273.15 + least, max: 273.15 + most, noNaN: true });

describe('laws of heat', () => {
  it('what mixes lies between the coldest and the hottest', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 1e-6, max: 0.1, noNaN: true }), celsius(0, 99)), {
          minLength: 1,
          maxLength: 5,
        }),
        (streams) => {
          const temperatures = streams.map(([, T]) => T);
          const mixed = mixedTemperature(
            streams.map(([q]) => q),
            temperatures,
          );
          expect(mixed).toBeGreaterThanOrEqual(Math.min(...temperatures) - 1e-6);
          expect(mixed).toBeLessThanOrEqual(Math.max(...temperatures) + 1e-6);
        },
      ),
    );
  });

  it('the cold water told brings the stream to its limit', () => {
    fc.assert(
      fc.property(
        celsius(65, 95),
        celsius(2, 30),
        fc.double({ min: 1e-5, max: 0.01, noNaN: true }),
        (hot, cold, q) => {
          const limit = 333.15;
          const mass = q / waterVolume(101_325, hot);
          expect(mixedTemperature([q, temperingFlow(mass, hot, limit, cold)], [hot, cold])).toBeCloseTo(
            limit,
            5,
          );
        },
      ),
    );
  });

  it('the table of open tanks gives more for a hotter bath, a thinner insulation, and nothing off its ends', () => {
    fc.assert(
      fc.property(fc.double({ min: tableStart, max: tableEnd - 1, noNaN: true }), (T) => {
        expect(tableLoss('evaporation', T + 1)).toBeGreaterThan(tableLoss('evaporation', T));
        const walls = (['bare', '25 mm', '50 mm', '75 mm'] as const).map((one) => tableLoss(one, T));
        expect(walls).toEqual([...walls].sort((a, b) => b - a));
      }),
    );
    expect(tableLoss('bare', tableStart - 0.1)).toBeNaN();
    expect(tableLoss('bare', tableEnd + 0.1)).toBeNaN();
  });

  it('moving air evaporates more, damper air less, and never the other way round', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 4e4, noNaN: true }),
        fc.double({ min: 0, max: 4e4, noNaN: true }),
        (V, water, air) => {
          const heat = evaporationHeat(1, V, water, air);
          expect(heat).toBeGreaterThanOrEqual(0);
          expect(evaporationHeat(1, V + 0.1, water, air)).toBeGreaterThanOrEqual(heat);
          expect(evaporationHeat(1, V, water, air + 100)).toBeLessThanOrEqual(heat);
        },
      ),
    );
  });

  it('steam blown in gives more heat than steam through a coil', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1e5, max: 2e6, noNaN: true }), celsius(5, 99), (p, bath) => {
        expect(steamHeat(p, bath, 'direct')).toBeGreaterThan(steamHeat(p, bath, 'indirect'));
      }),
    );
  });
});

describe('what cannot be is refused at its field', () => {
  it.each([
    ['a bath that is to cool down', 'heat/heat-up-time', { end: 280 }, 'HEAT_NO_RISE', 'end'],
    ['a bath of 120 degC', 'heat/heat-up-power', { end: 393.15 }, 'SHEET_RANGE', 'end'],
    ['a tank colder than the table', 'heat/open-tank-loss', { bath: 293.15 }, 'SHEET_BEYOND_TABLE', 'bath'],
    [
      'steam as cold as the bath',
      'heat/steam-need',
      { pressure: 0, atmosphere: 90_000, bath: 373.15 },
      'STEAM_NOT_HOTTER',
      'bath',
    ],
    ['a vacuum of steam', 'heat/saturated-steam', { pressure: -5e4 }, 'SHEET_RANGE', 'pressure'],
    ['a return hotter than its supply', 'heat/heating-water-need', { back: 360 }, 'HEAT_NO_FALL', 'back'],
    ['a single zone', 'heat/glass-shock', { temperatures: [300] }, 'SHEET_LIST_SHORT', 'temperatures'],
    [
      'flows without temperatures',
      'heat/drain-mix',
      { temperatures: [300] },
      'SHEET_LIST_LENGTH',
      'temperatures',
    ],
    ['a drain in which nothing flows', 'heat/drain-mix', { flows: [0, 0, 0] }, 'DRAIN_NO_FLOW', 'flows'],
    ['tempering with warm water', 'heat/drain-mix', { cold: 335 }, 'DRAIN_NOT_COLDER', 'cold'],
    [
      'supply air as damp as the room',
      'heat/room-moisture',
      { supply: 298.15, supplyHumidity: 0.9 },
      'ROOM_AIR_NO_DRIER',
      'supplyHumidity',
    ],
  ] as const)('%s', (_, id, wrong, code, path) => {
    expect(spoiled(id, wrong)).toEqual([[code, path]]);
  });
});

it('no word of these sheets calls anything safe', () => {
  expect(JSON.stringify(heatEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
