import type { ReactElement } from 'react';
import { type MovedFinding, type SettingChange, touchedChecks } from '../../../proof/settings/index.ts';
import { floorClass } from '../../floors/floor-class.ts';
import { useWords } from '../../state/page-context.ts';
import { dayText } from '../day-text.ts';
import { MediaStrip } from '../media/media-strip.tsx';
import { CheckLink } from '../open/check-link.tsx';
import { useProof } from '../with-proof.tsx';
import { MovedList } from './moved-list.tsx';
import { shortValue } from './short-value.ts';
import { useRegister } from './with-register.tsx';

export interface ChangeRowProps {
  readonly change: SettingChange;
  readonly movesOf: (some: readonly SettingChange[]) => readonly MovedFinding[];
}

/** One changed setting: what it was on the left of its name, what it is on the right. */
export const ChangeRow = ({ change, movesOf }: ChangeRowProps): ReactElement => {
  const words = useWords();
  const { say } = words;
  const { book, floor } = useProof();
  const { says } = useRegister();
  const { row, from, to } = change;
  const { record } = to;
  const touched = touchedChecks(change, book, floor.checks);
  const stale = touched.filter((one) => one.stale);
  const others = touched.filter((one) => !one.stale);
  return (
    <li data-change={row.id}>
      <div className="settings-facing">
        <span className={`settings-was ${floorClass(book, from.record.floor)}`}>
          {shortValue(says.value(row, from.text))}
        </span>
        <span className="settings-name">
          {says.name(row)} <span className="quiet small">{says.place(row)}</span>
        </span>
        <span
          className={`settings-is ${floorClass(book, record.floor)}${to.beyond === undefined ? '' : ' short'}`}
        >
          {shortValue(says.value(row, to.text))}
          {to.beyond !== undefined && ` ${say(to.beyond === 'most' ? 'settings.over' : 'settings.under')}`}
        </span>
      </div>
      <p className="small">
        {record.why !== undefined && `${say('settings.compare.why', { why: record.why })}. `}
        <span className="quiet">
          {say('settings.compare.by', { by: record.by, at: dayText(words, record.at.slice(0, 10)) })}
        </span>
      </p>
      <MediaStrip evidence={record.evidence ?? []} of={says.name(row)} />
      {stale.length > 0 && (
        <p className="settings-stale">
          {say('settings.compare.stale')}{' '}
          {stale.map(({ check }) => (
            <CheckLink key={check} id={check} />
          ))}
        </p>
      )}
      {others.length > 0 && (
        <details>
          <summary>{say('settings.compare.touches', { n: others.length })}</summary>
          {others.map(({ check }) => (
            <CheckLink key={check} id={check} />
          ))}
        </details>
      )}
      {row.paths.length + Number(row.sort === 'preset' || row.sort === 'changeOver') > 0 && (
        <MovedList label={say('settings.compare.moves')} find={() => movesOf([change])} />
      )}
    </li>
  );
};
