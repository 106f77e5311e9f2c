import { type ReactElement, useEffect, useRef } from 'react';
import type { Slip } from '../../fill/slips.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';

const kinds = { gross: 'mass', tare: 'mass', time: 'time' } as const;

/** A value of a slip as the question says it. */
export const slipValue = (
  words: Words,
  field: Slip['field'],
  value: number | string | undefined,
  unit: string | undefined,
): string => {
  if (value === undefined) return '';
  if (typeof value === 'string') return value;
  if (field === 'preset' || field === 'lane') return words.number(value, 6);
  return words.quantity(value, kinds[field], { units: 'book', unit, digits: 4 }).text;
};

export interface SlipQuestionProps {
  readonly slip: Slip;
  readonly unit: string;
  readonly take: () => void;
  readonly keep: () => void;
  readonly leave: () => void;
}

/** A likely slip is asked about, never refused: what was typed may be true. */
export const SlipQuestion = ({ slip, unit, take, keep, leave }: SlipQuestionProps): ReactElement => {
  const words = useWords();
  const { say } = words;
  const book = usePagePart((state) => state.book);
  const units = usePagePart((state) => state.units);
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => ref.current?.querySelector('button')?.focus(), []);
  const own = slip.field === 'time' ? 's' : unit;
  const { compared } = slip;
  const kind = compared.of === 'time' ? 'time' : 'mass';
  const told = (value: number) =>
    words.quantity(value, kind, { units, book, unit: kind === 'time' ? 's' : unit, digits: 4 }).text;
  return (
    <div
      className="slip"
      role="alertdialog"
      aria-label={say(`slip.${slip.code}`)}
      data-slip={slip.code}
      ref={ref}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        leave();
      }}
    >
      <p>
        <b>{say(`slip.${slip.code}`)}</b>{' '}
        {say(compared.bottles === 0 ? 'slip.expected.book' : 'slip.expected', {
          of: say(`slip.of.${compared.of}`),
          given: compared.given === undefined ? say('slip.nothing') : told(compared.given),
          expected: told(compared.expected),
          n: compared.bottles,
        })}
      </p>
      <div className="slip-keys">
        {slip.likely !== undefined && (
          <button type="button" data-act="take" onClick={take}>
            {say(`slip.take.${slip.field}`, { value: slipValue(words, slip.field, slip.likely, own) })}
          </button>
        )}
        <button type="button" data-act="keep" onClick={keep}>
          {say('slip.keep')}
        </button>
        <button type="button" data-act="leave" className="link" onClick={leave}>
          {say('slip.leave')}
        </button>
      </div>
    </div>
  );
};
