import { describe, expect, it } from 'vitest';
import { runSheet, type Sheet } from '../frame.ts';
import { airEntries } from './entries.ts';

const sheets = new Map<string, Sheet>(airEntries.map(({ sheet }) => [sheet.id, sheet]));
const cases = new Map(airEntries.map(({ sheet, cases: all }) => [sheet.id, all]));

/** The first case of a sheet with something wrong in it: codes and fields of what comes back. */
const spoiled = (id: string, wrong: Readonly<Record<string, unknown>>): [string, string][] => {
  const run = runSheet(sheets.get(id)!, { ...cases.get(id)![0]!.inputs, ...wrong });
  return run.ok ? [] : run.problems.map(({ code, path }) => [code, path]);
};

describe('what cannot be is refused at its field', () => {
  it.each([
    ['a rod thicker than its bore', 'air/cylinder-demand', { rod: 0.2 }, 'CYLINDER_ROD', 'rod'],
    ['a rod thicker than its bore, moving', 'air/stroke-time', { rod: 0.06 }, 'CYLINDER_ROD', 'rod'],
    [
      'a relative humidity of 140 %',
      'air/humid-air',
      { relativeHumidity: 1.4 },
      'SHEET_RANGE',
      'relativeHumidity',
    ],
    ['140 % at the intake', 'air/condensate', { relativeHumidity: 1.4 }, 'SHEET_RANGE', 'relativeHumidity'],
    [
      '140 % at the compressor',
      'air/compressor-capacity',
      { relativeHumidity: 1.4 },
      'SHEET_RANGE',
      'relativeHumidity',
    ],
    ['an absolute pressure below zero', 'air/humid-air', { pressure: -5 }, 'SHEET_RANGE', 'pressure'],
    ['a gauge pressure below a vacuum', 'air/actual-flow', { pressure: -2e5 }, 'SHEET_RANGE', 'pressure'],
    [
      'a gauge pressure below the vacuum of a high site',
      'air/restriction-flow',
      { downstream: -95_000, atmosphere: 90_000 },
      'AIR_BELOW_VACUUM',
      'downstream',
    ],
    ['a receiver with high below low', 'air/receiver-band', { high: 1e5, low: 3e5 }, 'RECEIVER_BAND', 'high'],
    [
      'a profile with high below low',
      'air/receiver-volume',
      { high: 1e5, low: 3e5 },
      'RECEIVER_BAND',
      'high',
    ],
    ['a time with high below low', 'air/receiver-time', { high: 1e5, low: 3e5 }, 'RECEIVER_BAND', 'high'],
    ['a profile with nothing in it', 'air/receiver-volume', { demands: [] }, 'SHEET_LIST_SHORT', 'demands'],
    ['a negative length', 'air/line-loss', { length: -1 }, 'SHEET_RANGE', 'length'],
    [
      'a compressor that never unloads',
      'air/leak-load-unload',
      { unloaded: 0 },
      'LEAK_NEVER_UNLOADS',
      'unloaded',
    ],
    ['a fall that rises', 'air/leak-decay', { after: 8e5 }, 'LEAK_NO_FALL', 'after'],
    [
      'a valve factor that is not printed',
      'air/valve-factor',
      { pressure: '40' },
      'VALVE_FACTOR_OFF',
      'loss',
    ],
    [
      'a refrigerated dryer that claims class 2',
      'air/treatment-chain',
      { waterGiven: '2' },
      'CHAIN_DRYER_CLASS',
      'waterGiven',
    ],
  ] as const)('%s', (_, id, wrong, code, path) => {
    expect(spoiled(id, wrong)).toEqual([[code, path]]);
  });
});

it('every problem of one entry comes at once', () => {
  expect(spoiled('air/line-loss', { length: -1, bore: 0, roughness: -1 }).map(([, path]) => path)).toEqual([
    'bore',
    'length',
    'roughness',
  ]);
});

it('every sheet of something under pressure carries its caution', () => {
  const pressed = airEntries.filter(({ sheet }) =>
    Object.values(sheet.outputs).some(
      (field) =>
        field.type !== 'choice' &&
        ['normalAirFlow', 'gaugePressure', 'force', 'energy', 'sonicConductance'].includes(field.kind),
    ),
  );
  const bare = pressed
    .filter(({ sheet }) => !sheet.limits.some(({ code }) => code === 'CAUTION_COMPRESSED_AIR'))
    .map(({ sheet }) => sheet.id);
  // a conversion of one figure into another moves nothing
  expect(bare).toEqual(['air/sonic-conductance']);
});

it('no word of these sheets calls anything safe', () => {
  expect(JSON.stringify(airEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
