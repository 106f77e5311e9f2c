import type { ReactElement } from 'react';
import type { Kind } from '../../quantity/index.ts';
import { usePageState, useWords } from '../state/page-context.ts';

export interface ShownQuantityProps {
  readonly value: number;
  readonly kind: Kind;
  readonly digits?: number | undefined;
  readonly unit?: string;
}

/** A number with its unit one step softer. */
export const ShownQuantity = ({ value, kind, digits, unit }: ShownQuantityProps): ReactElement => {
  const { units, shown } = usePageState();
  const text = useWords().quantity(value, kind, {
    units,
    book: shown,
    unit,
    ...(digits === undefined ? {} : { digits }),
  });
  return (
    <span className="shown">
      {text.number}
      {text.unit !== '' && (
        <>
          {'\u00a0'}
          <span className="unit">{text.unit}</span>
        </>
      )}
    </span>
  );
};
