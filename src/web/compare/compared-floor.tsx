import { type ReactElement, useEffect, useMemo, useState } from 'react';
import { type Book, valueAt } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { assessBook, type BookComparison } from '../../floor/index.ts';
import { floorClass } from '../floors/floor-class.ts';
import { SpineKey } from '../floors/spine-key.tsx';
import { holdText } from '../line/hold-sentence.tsx';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { changedValue } from './change-text.ts';
import { MovedRowView } from './moved-row.tsx';
import { movedRows } from './moved-rows.ts';

/** Changes that the comparison tries one by one; beyond them nobody knows which did what. */
const mostTried = 40;
/** Changes that are told; a book that differs in more is another book. */
const mostTold = 60;

const useComparison = (from: Book, to: Book): BookComparison | 'comparing' | 'failed' => {
  const page = usePage();
  const [found, setFound] = useState<{
    readonly from: Book;
    readonly to: Book;
    readonly comparison: BookComparison | 'failed';
  }>();
  useEffect(
    () => page.compareBooks({ from, to }, (comparison) => setFound({ from, to, comparison })),
    [page, from, to],
  );
  return found?.from === from && found.to === to ? found.comparison : 'comparing';
};

const Rate = ({ book, floor }: { readonly book: Book; readonly floor: FloorAssessment | undefined }) => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const rate = floor?.figures.runningRate;
  const shown =
    rate?.value === undefined
      ? undefined
      : words.quantity(rate.value, rate.kind, {
          units,
          book,
          bottles: true,
          digits: rate.value * 3600 < 999.5 ? 3 : 4,
        });
  return (
    <>
      <p className="rate">
        {shown === undefined ? (
          words.say('heads.unknown')
        ) : (
          <>
            {shown.number} <span className="unit">{shown.unit}</span>
          </>
        )}
      </p>
      <p className="hold">{holdText(words, floor?.hold, units, book)}</p>
    </>
  );
};

export interface ComparedProps {
  readonly from: Book;
  readonly to: Book;
  /** Tag of the floor that is looked at. */
  readonly floor: string;
}

/** One floor before and after, across the spine: the rates, what moved, what was changed in the book. */
export const ComparedFloor = ({ from, to, floor }: ComparedProps): ReactElement => {
  const words = useWords();
  const { say } = words;
  const comparison = useComparison(from, to);
  const [left, right] = useMemo(
    () => [from, to].map((book) => assessBook(book).floors.find((each) => each.floor === floor)),
    [from, to, floor],
  );
  const hue = floorClass(from, floor);
  const nameOf = (path: string): string =>
    words.placeName(valueAt(from, path) === undefined ? to : from, path);
  const moves =
    typeof comparison === 'string' ? undefined : comparison.floors.find((each) => each.floor === floor);
  const rows =
    moves === undefined || left === undefined || right === undefined ? [] : movedRows(moves, left, right);
  const changes = typeof comparison === 'string' ? [] : comparison.changes;
  return (
    <>
      <div className={`heads ${hue}`}>
        <div className="left">
          <Rate book={from} floor={left} />
        </div>
        <p className="middle">{say('heads.rate')}</p>
        <div>
          <Rate book={to} floor={right} />
        </div>
      </div>
      {typeof comparison === 'string' ? (
        <p className="quiet" role="status">
          {say(`compare.${comparison}`)}
        </p>
      ) : (
        <>
          {rows.length === 0 ? (
            <p className="quiet nothing-moved">{say('compare.still')}</p>
          ) : (
            <>
              <ol className="rows">
                {rows.map((row) => (
                  <MovedRowView
                    key={row.id}
                    row={row}
                    left={from}
                    right={to}
                    floor={hue}
                    nameOf={nameOf}
                    changes={changes.length}
                    tried={changes.length <= mostTried}
                  />
                ))}
              </ol>
              <SpineKey />
            </>
          )}
          <section className="changes" aria-label={say('compare.changes')}>
            <h2>{say('compare.changes')}</h2>
            {changes.length === 0 && <p className="quiet">{say('compare.same')}</p>}
            <ul>
              {changes.slice(0, mostTold).map((change) => (
                <li key={change.path}>
                  <span>{nameOf(change.path)}</span>
                  <span className="was">{changedValue(words, change.from)}</span>
                  <span aria-hidden="true">→</span>
                  <b>{changedValue(words, change.to)}</b>
                </li>
              ))}
            </ul>
            {changes.length > mostTold && (
              <p className="quiet">{say('compare.more', { n: changes.length - mostTold })}</p>
            )}
            {changes.length === 1 && rows.length > 0 && <p className="quiet">{say('compare.oneCause')}</p>}
          </section>
        </>
      )}
    </>
  );
};
