import type { ReactElement } from 'react';
import type { RegisterRow, SettingAt, SettingRow } from '../../../proof/settings/index.ts';
import { settingMoments } from '../../../record/setting-moments.ts';
import { useWords } from '../../state/page-context.ts';
import { SettingForm } from './setting-form.tsx';
import { shortValue } from './short-value.ts';
import { useRegister } from './with-register.tsx';

const Value = ({
  row,
  at,
}: {
  readonly row: SettingRow;
  readonly at: SettingAt | undefined;
}): ReactElement => {
  const { say } = useWords();
  const { says } = useRegister();
  if (at === undefined) return <span className="said">{say('settings.none')}</span>;
  const text = shortValue(says.value(row, at.text));
  if (at.odd === true) {
    return (
      <strong className="short" title={at.text}>
        {text} {say('settings.odd')}
      </strong>
    );
  }
  if (at.beyond === undefined) return <span title={at.text}>{text}</span>;
  return (
    <strong className="short" title={at.text}>
      {text} {say(at.beyond === 'most' ? 'settings.over' : 'settings.under')}
    </strong>
  );
};

export interface SettingRowLineProps {
  readonly one: RegisterRow;
  readonly isOpen: boolean;
  readonly choose: () => void;
  readonly done: (told: string) => void;
}

/** One setting with what is allowed and what it was at each moment. */
export const SettingRowLine = ({ one, isOpen, choose, done }: SettingRowLineProps): ReactElement => {
  const { row, range, at } = one;
  const { says, moment } = useRegister();
  const { say } = useWords();
  const name = says.name(row);
  return (
    <>
      <tr data-setting={row.id} data-open={isOpen}>
        <th scope="row" className="words">
          <button type="button" className="link" aria-expanded={isOpen} onClick={choose}>
            {name}
          </button>
          {row.format !== undefined && <span className="quiet small"> {row.format}</span>}
        </th>
        <td>{says.range(row, range)}</td>
        {settingMoments.map((each) => (
          <td key={each} data-asked={each === moment}>
            <Value row={row} at={at[each]} />
          </td>
        ))}
      </tr>
      {isOpen && (
        <tr className="settings-entry">
          <td colSpan={2 + settingMoments.length}>
            <SettingForm key={moment} one={one} done={done} label={say('settings.open', { name })} />
          </td>
        </tr>
      )}
    </>
  );
};
