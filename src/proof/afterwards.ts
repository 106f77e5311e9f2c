import type { Afterwards, Book } from '../book/index.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { dayNumber, dayText } from './day-number.ts';
import { placeFigure } from './place-figure.ts';
import { type RampUp, rampUpOf } from './ramp-up.ts';
import { runsOf } from './recorded-runs.ts';
import { runTally } from './run-tally.ts';

/** Something that is due after acceptance. */
export interface AfterRow {
  readonly id: string;
  readonly kind: NonNullable<Afterwards['kind']> | 'warranty begins' | 'warranty ends';
  readonly what?: string;
  readonly owner?: string;
  readonly check?: string;
  /** Day on which it is due; none while nobody knows the day of the acceptance, or how long after it. */
  readonly day?: string;
  /** Record that says that it was done. */
  readonly done?: string;
  /** Of a ramp-up: what its week was to reach and what its runs came to. */
  readonly rampUp?: RampUp;
  readonly path: string;
}

const day = 86_400;

/**
 * What is due after acceptance, by day: targets of the ramp-up, checks that are done again, sessions, warranty.
 *
 * Symbols  accepted  day on which it was, else the one that the book plans
 * Returns  rows by day, those without one last; done where a session names it, its check was
 *          tried on that day or later, or the runs of its week reached the target
 */
export const afterwardsOf = (
  book: Book,
  records: readonly Envelope[],
  accepted: string | undefined = book.about?.dates?.acceptance,
): readonly AfterRow[] => {
  const begin = dayNumber(accepted);
  const { current } = currentRecords(records);
  const site = book.floors?.find(({ role }) => role === 'bound for')?.tag;
  const runs = runsOf(records)
    .map(runTally)
    .filter(({ floor }) => floor === site);
  const doneOf = (tag: string, check: string | undefined, due: string | undefined): string | undefined =>
    current.find(({ kind, body, deviceTime }) => {
      const said = body as { readonly afterwards?: string; readonly check?: string };
      if (kind === 'session') return said.afterwards === tag;
      return kind === 'check' && check !== undefined && said.check === check && due !== undefined
        ? deviceTime.slice(0, 10) >= due
        : false;
    })?.id;
  const { warrantyStart, warrantyEnd } = book.about?.dates ?? {};
  const own = (book.afterwards ?? []).map(({ tag, kind = 'other', what, owner, check }, i): AfterRow => {
    const path = `/afterwards/${i}`;
    const after = placeFigure(book, `${path}/after`, 'time').value;
    const due = begin === undefined || after === undefined ? undefined : dayText(begin + after / day);
    const rampUp =
      kind !== 'ramp-up' || begin === undefined || due === undefined
        ? undefined
        : rampUpOf(book, path, runs, { accepted: begin, due: begin + after! / day });
    const done = doneOf(tag, check, due) ?? (rampUp?.met === true ? rampUp.runs.at(-1) : undefined);
    return {
      id: tag,
      kind,
      path,
      ...(what === undefined ? {} : { what }),
      ...(owner === undefined ? {} : { owner }),
      ...(check === undefined ? {} : { check }),
      ...(due === undefined ? {} : { day: due }),
      ...(done === undefined ? {} : { done }),
      ...(rampUp === undefined ? {} : { rampUp }),
    };
  });
  const dated = (id: AfterRow['kind'], on: string | undefined, field: string): readonly AfterRow[] =>
    on === undefined ? [] : [{ id, kind: id, day: on, path: `/about/dates/${field}` }];
  return [
    ...dated('warranty begins', warrantyStart, 'warrantyStart'),
    ...own,
    ...dated('warranty ends', warrantyEnd, 'warrantyEnd'),
  ].toSorted(
    (a, b) =>
      (dayNumber(a.day) ?? Number.POSITIVE_INFINITY) - (dayNumber(b.day) ?? Number.POSITIVE_INFINITY) || 0,
  );
};
