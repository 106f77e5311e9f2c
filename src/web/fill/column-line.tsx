import type { ReactNode } from 'react';
import { type OfRuns, shareDeviation } from '../../fill/index.ts';
import type { FloorRun } from '../../floor/fill/index.ts';
import type { RecordedAllowance } from '../../record/allowances.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { columnSheet } from './allowance-sheet.ts';
import { useBottleUnits } from './bottle-units.ts';
import { MeasuredBy } from './measured-by.tsx';
import { MeasuredField } from './measured-field.tsx';

/** How the liquid in the run of one floor is counted, which opens the sheet of it, and what would make it surer. */
const RunLine = ({
  run: { floor, column },
  narrower,
}: {
  readonly run: FloorRun;
  readonly narrower: number;
}): ReactNode => {
  const words = useWords();
  const { say, percent } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const { volume: unit } = useBottleUnits();
  const { source, share, volume, unsaid } = column;
  const name = book?.floors?.find(({ tag }) => tag === floor)?.name ?? floor;
  const [first] = unsaid;
  return (
    <p data-run={floor}>
      {name}:{' '}
      <GoLink to={columnSheet(column)}>
        {say('allowance.column', {
          share: percent(share),
          deviation: percent(shareDeviation(column)),
          volume: words.quantity(volume, 'volume', { units, book, unit, digits: 2 }).text,
        })}
      </GoLink>
      <span className="quiet"> {say(`allowance.column.by.${source}`, { narrower: percent(narrower) })} </span>
      {source === 'not said' && first !== undefined && (
        <GoLink to={bookPageAddress(id, first)}>{say('allowance.replace.run-column')}</GoLink>
      )}
    </p>
  );
};

/** The liquid in the runs of both floors while lanes close. */
export const ColumnLine = ({
  runs,
  ofRuns,
  measured,
}: {
  readonly runs: readonly FloorRun[];
  readonly ofRuns: OfRuns;
  readonly measured: RecordedAllowance | undefined;
}): ReactNode => {
  const { say } = useWords();
  if (runs.length === 0) return null;
  return (
    <li data-allowance="run-column">
      <b>{say('allowance.run-column')}</b>{' '}
      {runs.map((run) => (
        <RunLine key={run.floor} run={run} narrower={ofRuns[run.of]} />
      ))}
      {runs.some(({ column }) => column.source === 'measured') && <MeasuredBy record={measured} />}
      <MeasuredField code="run-column" />
    </li>
  );
};
