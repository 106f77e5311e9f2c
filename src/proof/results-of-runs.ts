import type { Book } from '../book/index.ts';
import { judgeLot } from '../fill/judge-lot.ts';
import { lotInSi } from '../floor/fill/index.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { lotsOf } from '../record/lots.ts';
import { runSheet } from '../sheets/frame.ts';
import { efficiencyByOwnerSheet } from '../sheets/rate/efficiency-by-owner.ts';
import { meanOfRunSheet } from '../sheets/rate/mean-of-run.ts';
import type { Basis } from './book-places.ts';
import { checkId } from './make-check.ts';
import { placeFigure } from './place-figure.ts';
import type { ConditionReading, RecordedResult } from './results.ts';

/** A run as a record holds it, in either version. */
export interface RecordedRun {
  readonly floor: string;
  readonly from: string;
  readonly to: string;
  /** That came out, those that were rejected counted in. */
  readonly bottles: number;
  readonly by: string;
  readonly format?: string;
  readonly rejected?: number;
  readonly broken?: number;
  readonly takenOut?: number;
  readonly bottlesIn?: number;
  readonly quarantined?: number;
  readonly stops?: readonly { readonly from: string; readonly to: string; readonly external?: boolean }[];
  readonly basis?: readonly Basis[];
  readonly conditions?: string | readonly ConditionReading[];
  readonly witness?: string;
  readonly evidence?: readonly string[];
  readonly remark?: string;
}

/** The runs that count now; a version of the future is passed over. */
export const runsOf = (records: readonly Envelope[]): readonly Envelope<RecordedRun>[] =>
  currentRecords(records).current.filter(
    ({ kind, version }) => kind === 'run' && version <= 2,
  ) as readonly Envelope<RecordedRun>[];

/** s between two moments; 0 where they are none or stand the wrong way round. */
const between = (from: string, to: string): number => {
  const seconds = (Date.parse(to) - Date.parse(from)) / 1000;
  return Number.isFinite(seconds) ? Math.max(0, seconds) : 0;
};

const digits = (value: number): string => String(Number(value.toPrecision(12)));

/** Share of a second by which a run may be called as long as agreed: a watch is stopped by hand. */
const asLong = 1 - 1e-3;

/** Good bottles in an hour, and the share of the time in which it ran: what is external of the stops is no time of the line. */
const shownBy = (run: RecordedRun) => {
  const duration = between(run.from, run.to);
  const good = run.bottles - (run.rejected ?? 0);
  const stood = (external: boolean): number =>
    (run.stops ?? [])
      .filter((stop) => (stop.external === true) === external)
      .reduce((sum, stop) => sum + between(stop.from, stop.to), 0);
  const rate = runSheet(meanOfRunSheet, { bottles: good, duration });
  const owners = runSheet(efficiencyByOwnerSheet, {
    duration,
    setRate: 1,
    good,
    machine: stood(false),
    supply: stood(true),
  });
  return {
    duration,
    rate: rate.ok ? `${digits(3600 * rate.value.outputs.rate)} bottles/h` : undefined,
    running: owners.ok ? `${digits(100 * owners.value.outputs.technicalAvailability)} %` : undefined,
  };
};

const ofRun = (book: Book, { id, deviceTime, body }: Envelope<RecordedRun>): readonly RecordedResult[] => {
  const format = body.format ?? book.line?.formats?.[0]?.tag;
  if (format === undefined) return [];
  const { duration, rate, running } = shownBy(body);
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
    ...(running === undefined || body.stops === undefined
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
