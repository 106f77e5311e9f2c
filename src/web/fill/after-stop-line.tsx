import type { ReactElement } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { fillAddress, sheetAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import { useAnswer } from './with-answer.tsx';

/** Enough that the sheet gives the line's own figure. */
const decimals = 3;

/** The sheet of the first bottles, with these in it. */
const firstBottlesSheet = (misses: readonly number[]): string =>
  sheetAddress('contents/first-bottles', {
    misses: misses.map((miss) => `${(miss * 1e6).toFixed(decimals)} mL`).join('; '),
  });

/** Air that gathers in the manifold while the line stands: the intervals speak of a running line, this of its first bottles. */
export const AfterStopLine = (): ReactElement => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const { volume: unit } = useBottleUnits();
  const { answer } = useAnswer();
  const misses = (answer?.apart ?? []).flatMap(({ miss }) => miss ?? []);
  const text = (value: number): string =>
    words.quantity(value, 'volume', { units, book, unit, digits: 2 }).text;
  const mean = misses.reduce((sum, one) => sum + one, 0) / misses.length;
  return (
    <li data-allowance="air-after-stop">
      <b>{say('allowance.air-after-stop')}</b>{' '}
      {misses.length === 0 ? (
        <>
          <span>{say('allowance.air-after-stop.none')}</span>{' '}
          <GoLink to={fillAddress(id, 'weigh')}>{say('allowance.replace.air-after-stop')}</GoLink>
        </>
      ) : (
        <>
          <GoLink to={firstBottlesSheet(misses)}>
            {say(mean < 0 ? 'allowance.air-after-stop.less' : 'allowance.air-after-stop.more', {
              by: text(Math.abs(mean)),
              low: text(Math.min(...misses)),
              high: text(Math.max(...misses)),
              n: misses.length,
            })}
          </GoLink>{' '}
          <span className="quiet">{say('allowance.source.measured')}</span>
        </>
      )}
    </li>
  );
};
