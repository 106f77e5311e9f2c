import { describe, expect, it } from 'vitest';
import { runSheet, type Sheet } from '../frame.ts';
import { rateEntries } from './entries.ts';

const sheets = new Map<string, Sheet>(rateEntries.map(({ sheet }) => [sheet.id, sheet]));
const cases = new Map(rateEntries.map(({ sheet, cases: all }) => [sheet.id, all]));

/** The first case of a sheet with something wrong in it: codes and fields of what comes back. */
const spoiled = (id: string, wrong: Readonly<Record<string, unknown>>): [string, string][] => {
  const run = runSheet(sheets.get(id)!, { ...cases.get(id)![0]!.inputs, ...wrong });
  return run.ok ? [] : run.problems.map(({ code, path }) => [code, path]);
};

describe('what cannot be is refused at its field', () => {
  it.each([
    ['a run that was never planned', 'time-figures', { planned: 0 }, 'SHEET_RANGE', 'planned'],
    ['more running than planned', 'time-figures', { running: 28_801 }, 'RUN_OVER_PLANNED', 'running'],
    ['more good bottles than made', 'time-figures', { good: 401 }, 'GOOD_OVER_MADE', 'good'],
    ['stops as long as the run', 'efficiency-by-owner', { machine: 26_640 }, 'STOPS_FILL_RUN', 'duration'],
    ['a washer no faster than the filler', 'recovery-time', { slower: 1 }, 'BUFFER_NEVER_RECOVERS', 'faster'],
    ['sensors swapped', 'cap-chute', { low: 80, high: 20 }, 'CHUTE_SENSORS_SWAPPED', 'high'],
    ['a sorter too slow', 'cap-chute', { feed: 0.1 }, 'CHUTE_FEED_SLOW', 'feed'],
    ['more bottles than can be done', 'waiting-before-station', { pace: 0.9 }, 'WAIT_GROWS', 'arrivals'],
    ['no head', 'waiting-limited-room', { heads: 0 }, 'SHEET_RANGE', 'heads'],
    ['half a place', 'waiting-limited-room', { room: 3.5 }, 'RATE_NOT_WHOLE', 'room'],
    ['fewer places than heads', 'waiting-limited-room', { heads: 4 }, 'ROOM_UNDER_HEADS', 'room'],
    ['room that the formula does not hold', 'two-stations-with-room', { room: 3 }, 'SHEET_RANGE', 'room'],
    ['stops that take no time', 'two-stations-in-time', { clearing: 0 }, 'SHEET_RANGE', 'clearing'],
    ['a single run', 'interval-of-runs', { values: [2] }, 'SHEET_LIST_SHORT', 'values'],
    ['a mean of nought', 'runs-wanted', { mean: 0 }, 'RUNS_MEAN_NEAR_NONE', 'mean'],
    ['more batches than values', 'batch-means', { batches: 13 }, 'BATCHES_TOO_MANY', 'batches'],
    ['a warm-up as long as the run', 'batch-means', { warmUp: 12 }, 'BATCHES_TOO_MANY', 'batches'],
    ['runs without their pair', 'paired-change', { after: [1, 2] }, 'SHEET_LIST_LENGTH', 'after'],
    ['more bad than looked at', 'share-bounds', { found: 21 }, 'FOUND_OVER_LOOKED', 'found'],
    ['half a bad bottle', 'trials-wanted', { allowed: 0.5 }, 'RATE_NOT_WHOLE', 'allowed'],
    ['ended by a stop without one', 'mean-time-shown', { endedBy: 'stop' }, 'STOP_ENDED_NONE', 'stops'],
    ['a mean of no stops', 'mean-time-between-stops', { stops: 0 }, 'SHEET_RANGE', 'stops'],
    [
      'an availability that the line has not',
      'run-to-show-availability',
      { agreed: 0.96 },
      'AVAILABILITY_BELOW_AGREED',
      'agreed',
    ],
    ['a plan that refuses none', 'acceptance-plan', { accepted: 80 }, 'PLAN_REFUSES_NONE', 'accepted'],
  ] as const)('%s', (_, name, wrong, code, path) => {
    expect(spoiled(`rate/${name}`, wrong)).toEqual([[code, path]]);
  });
});

it('no word of these sheets calls anything safe', () => {
  expect(JSON.stringify(rateEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
