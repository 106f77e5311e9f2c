import type { Book } from '../book/index.ts';
import { judgeLot } from '../fill/judge-lot.ts';
import { lotInSi } from '../floor/fill/index.ts';
import type { Envelope } from '../record/envelope.ts';
import { lotsOf } from '../record/lots.ts';
import { runSheet } from '../sheets/frame.ts';
import { efficiencyByOwnerSheet } from '../sheets/rate/efficiency-by-owner.ts';
import { meanOfRunSheet } from '../sheets/rate/mean-of-run.ts';
import { checkId } from './make-check.ts';
import { placeFigure } from './place-figure.ts';
import { type RecordedRun, runsOf } from './recorded-runs.ts';
import type { RecordedResult } from './results.ts';
import { runTally } from './run-tally.ts';

const digits = (value: number): string => String(Number(value.toPrecision(12)));

/** Share of a second by which a run may be called as long as agreed: a watch is stopped by hand. */
const asLong = 1 - 1e-3;

/** Good bottles in an hour, and the share of the time in which it ran. */
const shownBy = (run: Envelope<RecordedRun>) => {
  const { duration, good, stood } = runTally(run);
  const rate = runSheet(meanOfRunSheet, { bottles: good, duration });
  const owners =
    stood === undefined
      ? undefined
      : runSheet(efficiencyByOwnerSheet, { duration, setRate: 1, good, ...stood });
  return {
    duration,
    rate: rate.ok ? `${digits(3600 * rate.value.outputs.rate)} bottles/h` : undefined,
    running:
      owners?.ok === true ? `${digits(100 * owners.value.outputs.technicalAvailability)} %` : undefined,
  };
};

const ofRun = (book: Book, recorded: Envelope<RecordedRun>): readonly RecordedResult[] => {
  const { id, deviceTime, body } = recorded;
  const format = body.format ?? book.line?.formats?.[0]?.tag;
  if (format === undefined) return [];
  const { duration, rate, running } = shownBy(recorded);
  const agreed = placeFigure(book, '/agreement/acceptanceRun', 'time').value;
  const { floor, by, basis, witness, evidence, remark, conditions } = body;
  const common = {
    id,
    at: deviceTime,
    floor,
    by,
    shared: true,
    ...(basis === undefined ? {} : { basis }),
    ...(typeof conditions === 'string' || conditions === undefined ? {} : { conditions }),
    ...(witness === undefined ? {} : { witness }),
    ...(evidence === undefined ? {} : { evidence }),
    ...(remark === undefined ? {} : { remark }),
  } as const;
  const brief = agreed !== undefined && duration < agreed * asLong ? { brief: true } : {};
  const { bottlesIn, broken = 0, takenOut = 0, bottles } = body;
  return [
    ...(rate === undefined
      ? []
      : [{ ...common, ...brief, check: checkId('rate', [format]), readings: [rate] }]),
    // without a list of stops nobody said that there was none
    ...(running === undefined
      ? []
      : [{ ...common, ...brief, check: checkId('efficiency', [format]), readings: [running] }]),
    ...(bottlesIn === undefined
      ? []
      : [{ ...common, check: checkId('count', [format]), seen: bottlesIn === bottles + broken + takenOut }]),
  ];
};

/** Runs and lots as tries of the checks that they answer: nothing that was counted or weighed is typed a second time. */
export const resultsOfRuns = (book: Book, records: readonly Envelope[]): readonly RecordedResult[] => [
  ...runsOf(records).flatMap((run) => ofRun(book, run)),
  ...lotsOf(records).flatMap((recorded): readonly RecordedResult[] => {
    const { id, at = '', floor, format, by = '' } = recorded;
    const read = lotInSi(book, recorded);
    const verdict = read.ok && read.value.lot !== undefined ? judgeLot(read.value.lot).verdict : undefined;
    if (verdict !== 'accept' && verdict !== 'reject') return [];
    return [
      { id, at, floor, by, shared: true, check: checkId('contents', [format]), seen: verdict === 'accept' },
    ];
  }),
];
