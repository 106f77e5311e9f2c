import { describe, expect, it } from 'vitest';
import { runSheet, type Sheet } from '../frame.ts';
import { hygieneEntries } from './entries.ts';

const sheets = new Map<string, Sheet>(hygieneEntries.map(({ sheet }) => [sheet.id, sheet]));
const cases = new Map(hygieneEntries.map(({ sheet, cases: all }) => [sheet.id, all]));

/** The first case of a sheet with something wrong in it: codes and fields of what comes back. */
const spoiled = (id: string, wrong: Readonly<Record<string, unknown>>): [string, string][] => {
  const run = runSheet(sheets.get(id)!, { ...cases.get(id)![0]!.inputs, ...wrong });
  return run.ok ? [] : run.problems.map(({ code, path }) => [code, path]);
};

describe('what cannot be is refused at its field', () => {
  it.each([
    ['a negative time', 'hygiene/sanitising-rule', { time: -1 }, 'SHEET_RANGE', 'time'],
    ['a pH of 15', 'hygiene/sanitising-rule', { acidity: 15 }, 'SHEET_RANGE', 'acidity'],
    ['a rule that is not held', 'hygiene/sanitising-rule', { rule: 'house rule' }, 'SHEET_CHOICE', 'rule'],
    [
      'a medium of which the rule has no row',
      'hygiene/sanitising-rule',
      { medium: 'hot air' },
      'RULE_NO_ROW',
      'medium',
    ],
    ['a code without figures', 'hygiene/caustic-rule', { rule: 'NV 584.2511' }, 'CAUSTIC_NO_FIGURES', 'rule'],
    ['over 100 % of caustic', 'hygiene/caustic-rule', { caustic: 1.2 }, 'SHEET_RANGE', 'caustic'],
    ['more caustic than alkali', 'hygiene/caustic-rule', { caustic: 0.2 }, 'CAUSTIC_OVER_ALKALI', 'caustic'],
    ['half a station', 'hygiene/contact-share', { stations: 3.5 }, 'HYGIENE_NOT_WHOLE', 'stations'],
    [
      'a contact that no index gives',
      'hygiene/contact-gated',
      { timeOut: 5 },
      'CONTACT_NO_INDEX',
      'required',
    ],
    [
      'a log shorter than the zone',
      'hygiene/contact-log',
      { stations: 20 },
      'CONTACT_LOG_SHORT',
      'intervals',
    ],
    [
      'pH over the Giardia table',
      'hygiene/giardia-chlorine',
      { acidity: 9.5 },
      'SHEET_BEYOND_TABLE',
      'acidity',
    ],
    ['pH under the virus table', 'hygiene/virus-chlorine', { acidity: 5.5 }, 'SHEET_BEYOND_TABLE', 'acidity'],
    ['ice water for ozone', 'hygiene/other-ct', { temperature: 273.2 }, 'SHEET_BEYOND_TABLE', 'temperature'],
    [
      'a caustic bath off the table',
      'hygiene/caustic-equivalent',
      { time: 450 },
      'SHEET_BEYOND_TABLE',
      'time',
    ],
    ['times that go back', 'hygiene/f-zero', { times: [10, 5] }, 'TIMES_ASCEND', 'times'],
    [
      'fewer temperatures than times',
      'hygiene/a-zero',
      { times: [0, 5, 9] },
      'SHEET_LIST_LENGTH',
      'temperatures',
    ],
    ['a colder second temperature', 'hygiene/z-value', { warmer: 300 }, 'Z_WARMER', 'warmer'],
    ['a concentrate that is too weak', 'hygiene/dilution', { weak: 50 }, 'DILUTION_STRONGER', 'weak'],
    ['a dose weaker than what is wanted', 'hygiene/dosing-flow', { strong: 0.01 }, 'DOSING_WEAK', 'strong'],
    [
      'less acid in all than to the first turn',
      'hygiene/caustic-titration',
      { total: 1e-6 },
      'TITRATION_TOTAL',
      'total',
    ],
    [
      'a bottle lighter wet than dry',
      'hygiene/drag-out',
      { drained: [0.4, 0.6, 0.6] },
      'DRAG_OUT_LIGHTER',
      'drained',
    ],
  ] as const)('%s', (_, id, wrong, code, path) => {
    expect(spoiled(id, wrong)).toEqual([[code, path]]);
  });
});

it('every sheet of a chemical carries its caution, every sheet of hot water its own', () => {
  const carries = (sheet: Sheet, code: string) => sheet.limits.some((limit) => limit.code === code);
  const of = (kind: string) =>
    hygieneEntries.filter(({ sheet }) =>
      [...Object.values(sheet.inputs), ...Object.values(sheet.outputs)].some(
        (field) => field.type !== 'choice' && field.kind === kind,
      ),
    );
  const chemical = [...of('soluteConcentration'), ...of('massFraction'), ...of('concentrationTime')];
  expect(chemical.length).toBeGreaterThan(15);
  expect(
    chemical.filter(({ sheet }) => !carries(sheet, 'CAUTION_CHEMICAL')).map(({ sheet }) => sheet.id),
  ).toEqual([]);
  const hot = of('temperature').filter(({ sheet }) => !carries(sheet, 'CAUTION_SCALD'));
  // water for drinking, and a number out of two temperatures
  expect(hot.map(({ sheet }) => sheet.id)).toEqual([
    'hygiene/giardia-chlorine',
    'hygiene/giardia-regression',
    'hygiene/virus-chlorine',
    'hygiene/other-ct',
    'hygiene/z-value',
  ]);
});

it('no word of these sheets calls anything safe', () => {
  const said = JSON.stringify(hygieneEntries.map(({ text }) => text));
  // the name of a statute stays as it is
  expect(said.replaceAll('Health and Safety Code', '')).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
