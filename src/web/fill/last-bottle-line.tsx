import type { ReactElement } from 'react';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import type { LastBottle } from './last-bottle.ts';

/** What the bottle says that was just written down: it is there at once, the whole answer comes with the next question. */
export const LastBottleLine = ({ of }: { readonly of: LastBottle }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const { volume: unit } = useBottleUnits();
  const text = (value: number, digits: number): string =>
    words.quantity(value, 'volume', { units, book, unit, digits }).text;
  const { lane, preset, volume, overflowed, bottles, mean, off, level } = of;
  const told = { lane, preset: number(preset, 6), volume: text(volume, 5) };
  const over = mean === undefined || level === undefined ? undefined : mean - level;
  return (
    <p className="small" data-last-bottle={lane}>
      {say(overflowed ? 'weigh.last.over' : 'weigh.last', told)}{' '}
      {off !== undefined &&
        say(off < 0 ? 'weigh.last.less' : 'weigh.last.more', {
          off: text(Math.abs(off), 2),
          n: bottles - 1,
        })}{' '}
      {mean !== undefined &&
        over !== undefined &&
        say(over < 0 ? 'weigh.last.under' : 'weigh.last.reaches', {
          mean: text(mean, 5),
          n: bottles,
          by: text(Math.abs(over), 2),
        })}
    </p>
  );
};
