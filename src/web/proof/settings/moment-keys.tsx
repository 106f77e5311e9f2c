import { type ReactElement, useId } from 'react';
import { type SettingMoment, settingMoments } from '../../../record/setting-moments.ts';
import { useWords } from '../../state/page-context.ts';

/** The moment of which is spoken. */
export const MomentKeys = ({
  label,
  value,
  change,
}: {
  readonly label: string;
  readonly value: SettingMoment;
  readonly change: (moment: SettingMoment) => void;
}): ReactElement => {
  const { say } = useWords();
  const group = useId();
  return (
    <fieldset className="moment-keys">
      <legend>{label}</legend>
      {settingMoments.map((moment) => (
        <label key={moment}>
          <input
            type="radio"
            name={group}
            value={moment}
            checked={moment === value}
            onChange={() => change(moment)}
          />
          {say(`setting.moment.${moment}`)}
        </label>
      ))}
    </fieldset>
  );
};
