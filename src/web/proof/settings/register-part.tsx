import { type ReactElement, useState } from 'react';
import { settingMoments } from '../../../record/setting-moments.ts';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useWords } from '../../state/page-context.ts';
import { MomentKeys } from './moment-keys.tsx';
import { SettingRowLine } from './setting-row-line.tsx';
import { useRegister } from './with-register.tsx';

/** The register, place by place; the row that is opened takes its value. */
export const RegisterPart = (): ReactElement => {
  const { say } = useWords();
  const { register, says, moment, chooseMoment } = useRegister();
  const [open, setOpen] = useState<string>();
  const [told, setTold] = useState('');
  const { rows } = register;
  const places = [...new Set(rows.map(({ row }) => says.place(row)))];
  const read = rows.filter(({ at }) => at[moment] !== undefined);
  const beyond = read.filter(({ at }) => at[moment]?.beyond !== undefined);
  return (
    <section className="open-part" data-part="register">
      <h3>{say('settings.register')}</h3>
      <MomentKeys label={say('settings.moment')} value={moment} change={chooseMoment} />
      <p className="open-told">
        {say('settings.read', { read: read.length, n: rows.length, moment: say(`setting.moment.${moment}`) })}{' '}
        {beyond.length > 0 && <span className="short">{say('settings.beyond', { n: beyond.length })}</span>}
      </p>
      <p role="status">{told}</p>
      <ScrollRegion label={say('settings.register')}>
        <table className="settings-table">
          <thead>
            <tr>
              <th scope="col" className="words">
                {say('settings.what')}
              </th>
              <th scope="col">{say('settings.allowed')}</th>
              {settingMoments.map((one) => (
                <th scope="col" key={one} data-asked={one === moment}>
                  {say(`setting.moment.${one}`)}
                </th>
              ))}
            </tr>
          </thead>
          {places.map((place) => (
            <tbody key={place}>
              <tr className="settings-place">
                <th colSpan={2 + settingMoments.length} scope="colgroup">
                  {place}
                </th>
              </tr>
              {rows
                .filter(({ row }) => says.place(row) === place)
                .map((one) => (
                  <SettingRowLine
                    key={one.row.id}
                    one={one}
                    isOpen={open === one.row.id}
                    choose={() => setOpen(open === one.row.id ? undefined : one.row.id)}
                    done={(said) => {
                      setTold(said);
                      setOpen(undefined);
                    }}
                  />
                ))}
            </tbody>
          ))}
        </table>
      </ScrollRegion>
      <p className="small quiet">{say('setting.caution')}</p>
    </section>
  );
};
