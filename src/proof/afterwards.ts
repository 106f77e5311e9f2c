import type { Afterwards, Book } from '../book/index.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { dayNumber, dayText } from './day-number.ts';
import { placeFigure } from './place-figure.ts';

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
  readonly path: string;
}

const day = 86_400;

/**
 * What is due after acceptance, by day: targets of the ramp-up, checks that are done again, sessions, warranty.
 *
 * Symbols  accepted  day on which it was, else the one that the book plans
 * Returns  rows by day, those without one last; done where a session names it, or its check was tried on that day or later
 */
export const afterwardsOf = (
  book: Book,
  records: readonly Envelope[],
  accepted: string | undefined = book.about?.dates?.acceptance,
): readonly AfterRow[] => {
  const begin = dayNumber(accepted);
  const { current } = currentRecords(records);
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
    const done = doneOf(tag, check, due);
    return {
      id: tag,
      kind,
      path,
      ...(what === undefined ? {} : { what }),
      ...(owner === undefined ? {} : { owner }),
      ...(check === undefined ? {} : { check }),
      ...(due === undefined ? {} : { day: due }),
      ...(done === undefined ? {} : { done }),
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
