import type { ReactNode } from 'react';
import type { FloorAllowances } from '../../floor/fill/index.ts';
import type { RecordedAllowance } from '../../record/allowances.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { columnSheet } from './allowance-sheet.ts';
import { useBottleUnits } from './bottle-units.ts';
import { MeasuredBy } from './measured-by.tsx';
import { MeasuredField } from './measured-field.tsx';

/** How the liquid in the run is counted while lanes close, which opens the sheet of it. */
export const ColumnLine = ({
  column,
  measured,
}: {
  readonly column: FloorAllowances['column'];
  readonly measured: RecordedAllowance | undefined;
}): ReactNode => {
  const words = useWords();
  const { say, percent } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const { volume: unit } = useBottleUnits();
  if (column === undefined) return null;
  const { source, share, deviation, volume } = column;
  return (
    <li data-allowance="run-column">
      <b>{say('allowance.run-column')}</b>{' '}
      <GoLink to={columnSheet(column)}>
        {say(`allowance.column.${source}`, {
          share: percent(share),
          deviation: percent(deviation),
          volume: words.quantity(volume, 'volume', { units, book, unit, digits: 2 }).text,
        })}
      </GoLink>{' '}
      {source === 'stiff run' && <span className="quiet">{say('allowance.column.by.stiff run')} </span>}
      {source === 'measured' && <span className="quiet">{say('allowance.source.measured')} </span>}
      {source === 'measured' && <MeasuredBy record={measured} />}
      {source === 'not counted' && (
        <GoLink to={bookPageAddress(id, '/floors')}>{say('allowance.replace.run-column')}</GoLink>
      )}
      <MeasuredField code="run-column" />
    </li>
  );
};
