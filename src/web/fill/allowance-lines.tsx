import type { ReactElement } from 'react';
import type { Allowance, OfRuns } from '../../fill/index.ts';
import type { FloorAllowances } from '../../floor/fill/index.ts';
import { stationOf } from '../../floor/station-of.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, fillAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { AfterStopLine } from './after-stop-line.tsx';
import { allowanceSheet } from './allowance-sheet.ts';
import { ColumnLine } from './column-line.tsx';
import { useFillPlace } from './fill-place.tsx';
import { measurable, useMeasured } from './measured-allowances.ts';
import { MeasuredBy } from './measured-by.tsx';
import { MeasuredField } from './measured-field.tsx';

/** Where what would take the place of a line is written. */
const useReplacedAt = (): ((code: Allowance['code']) => string) => {
  const id = usePagePart((state) => state.id);
  const { book } = useFillPlace();
  const lanes = `${stationOf(book, 'fill')?.path ?? '/line/stations'}/lanes/0`;
  return (code) =>
    code === 'valve-air'
      ? bookPageAddress(id, '/floors')
      : code === 'meter-flow'
        ? bookPageAddress(id, lanes)
        : fillAddress(id, 'weigh');
};

/** By how much a line moves its value, which opens the sheet that says so. */
const Amount = ({
  line,
  change,
}: {
  readonly line: Allowance;
  readonly change: FloorAllowances;
}): ReactElement => {
  const { say, percent } = useWords();
  const { moves, shift, deviation } = line;
  const text = `${say(`allowance.moves.${moves}`)} ${shift === 0 ? '' : `${shift > 0 ? '+' : ''}${percent(shift)} `}± ${percent(deviation)}`;
  return <GoLink to={allowanceSheet(line, change)}>{text}</GoLink>;
};

/** What two floors change and the trials on one can't tell: each a line with its source that a measurement replaces. */
export const AllowanceLines = ({
  change,
  ofRuns,
}: {
  readonly change: FloorAllowances;
  readonly ofRuns: OfRuns;
}): ReactElement => {
  const { say, number } = useWords();
  const replacedAt = useReplacedAt();
  const measured = useMeasured();
  // measured as nothing a line has no effect, and can still be written away
  const unmoved = measurable.filter(
    (code) => measured[code] !== undefined && change.allowances.every((line) => line.code !== code),
  );
  return (
    <section className="fill-part allowances">
      <h3>{say('allowances.title')}</h3>
      <p className="small quiet">
        {say(change.sameProduct ? 'allowances.same' : 'allowances.product', {
          ratio: number(change.viscosityRatio, 2),
        })}{' '}
        {change.airRatio === undefined && say('allowances.air.none')}
      </p>
      {change.allowances.length === 0 && <p>{say('allowances.none')}</p>}
      <ul>
        {change.allowances.map((line) => (
          <li key={line.code} data-allowance={line.code}>
            <b>{say(`allowance.${line.code}`)}</b> <Amount line={line} change={change} />{' '}
            <span className="quiet">{say(`allowance.source.${line.source}`)}</span>{' '}
            {line.source === 'measured' && <MeasuredBy record={measured[line.code]} />}
            {line.source !== 'measured' && (
              <GoLink to={replacedAt(line.code)}>{say(`allowance.replace.${line.code}`)}</GoLink>
            )}
            <MeasuredField code={line.code} />
          </li>
        ))}
        {unmoved.map((code) => (
          <li key={code} data-allowance={code}>
            <b>{say(`allowance.${code}`)}</b> <span>{say('allowance.unmoved')}</span>{' '}
            <span className="quiet">{say('allowance.source.measured')}</span>{' '}
            <MeasuredBy record={measured[code]} />
            <MeasuredField code={code} />
          </li>
        ))}
        <ColumnLine runs={change.runs} ofRuns={ofRuns} measured={measured['run-column']} />
        <AfterStopLine />
      </ul>
    </section>
  );
};
