import type { ReactElement } from 'react';
import type { HeldLimit } from '../../../proof/index.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { useProof } from '../with-proof.tsx';
import { barScale, placeOn } from './bar-scale.ts';

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;

/** The reading that counts as a bar, the limit as a tick across it, each reading as a mark; what goes beyond is hatched. */
export const LimitBar = ({
  held: { limit, value, kept },
  values,
}: {
  readonly held: HeldLimit;
  readonly values: readonly number[];
}): ReactElement | null => {
  const { say, quantity } = useWords();
  const units = usePagePart((state) => state.units);
  const { book } = useProof();
  const says = useCheckSays();
  const scale = barScale(limit, value === undefined ? values : [...values, value]);
  const bound = limit.figure.value;
  if (scale === undefined || bound === undefined) return null;
  const counted =
    value === undefined
      ? say('proving.run.bar.none')
      : quantity(value, limit.figure.kind, { units, book }).text;
  const share = limit.sense === 'within' ? Math.abs(bound) * (limit.share ?? 0) : 0;
  const ticks = share === 0 ? [bound] : [bound - share, bound + share];
  return (
    <div
      className="limit-bar"
      role="img"
      aria-label={say('proving.run.bar', { value: counted, limit: says.limit(limit) })}
      data-kept={kept === undefined ? 'untold' : String(kept)}
      data-cut={scale.cut}
    >
      {value !== undefined && <span className="bar-fill" style={{ width: percent(placeOn(scale, value)) }} />}
      {values.map((one, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: equal readings are told apart by their place alone
        <span key={i} className="bar-mark" style={{ left: percent(placeOn(scale, one)) }} />
      ))}
      {ticks.map((tick) => (
        <span key={tick} className="bar-tick" style={{ left: percent(placeOn(scale, tick)) }} />
      ))}
    </div>
  );
};
