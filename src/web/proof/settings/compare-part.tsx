import { type ReactElement, useMemo, useState } from 'react';
import { compareSettings, findingMover } from '../../../proof/settings/index.ts';
import type { SettingMoment } from '../../../record/setting-moments.ts';
import { floorClass } from '../../floors/floor-class.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { ChangeRow } from './change-row.tsx';
import { MomentKeys } from './moment-keys.tsx';
import { MovedList } from './moved-list.tsx';
import { useRegister } from './with-register.tsx';

/** What changed between two moments, each side of a spine of names, with what it makes stale and what it moves. */
export const ComparePart = (): ReactElement => {
  const { say } = useWords();
  const { book, floor } = useProof();
  const { register, floorAt } = useRegister();
  const format = usePagePart((state) => state.assessment?.format);
  const [from, setFrom] = useState<SettingMoment>('run-off');
  const [to, setTo] = useState<SettingMoment>('as left');
  const compared = useMemo(() => compareSettings(register, from, to), [register, from, to]);
  const { changed, same, untold } = compared;
  // worked out where somebody asks: a floor is assessed anew for each answer
  const movesOf = useMemo(
    () => findingMover(book, floor.floor, changed, format),
    [book, floor.floor, changed, format],
  );
  const moment = (one: SettingMoment): string => say(`setting.moment.${one}`);
  return (
    <section className="open-part" data-part="compare">
      <h3>{say('settings.compare')}</h3>
      <div className="compare-moments">
        <MomentKeys label={say('settings.compare.from')} value={from} change={setFrom} />
        <MomentKeys label={say('settings.compare.to')} value={to} change={setTo} />
      </div>
      <p className="open-told" data-told="compared">
        {say('settings.compare.changed', {
          n: changed.length,
          from: moment(from),
          to: moment(to),
          same: same.length,
        })}{' '}
        {untold.length > 0 && say('settings.compare.untold', { n: untold.length })}
      </p>
      {changed.length > 0 && (
        <>
          <div className="settings-heads" aria-hidden="true">
            <span className={floorClass(book, floorAt(from))}>{moment(from)}</span>
            <span className={floorClass(book, floorAt(to))}>{moment(to)}</span>
          </div>
          <ul className="settings-spine">
            {changed.map((change) => (
              <ChangeRow key={change.row.id} change={change} movesOf={movesOf} />
            ))}
          </ul>
          <MovedList
            label={say('settings.compare.all')}
            find={() => movesOf(changed)}
            key={`${from} ${to}`}
          />
        </>
      )}
    </section>
  );
};
