import { type ReactElement, useId } from 'react';
import type { Lack } from '../../../proof/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { groupedLacks } from './grouped-lacks.ts';
import { LackLink } from './lack-link.tsx';
import { useLackWords } from './lack-words.ts';

export interface LackListProps {
  readonly lacks: readonly Lack[];
  /** Ids that no signature names yet. */
  readonly unnamed?: ReadonlySet<string>;
  /** Where each is ticked as read. */
  readonly reading?: {
    readonly read: ReadonlySet<string>;
    readonly turn: (ids: readonly string[], read: boolean) => void;
  };
}

/** One lack that is read and named before somebody signs. */
const ReadLack = ({
  lack,
  reading,
}: {
  readonly lack: Lack;
  readonly reading: NonNullable<LackListProps['reading']>;
}): ReactElement => {
  const { name } = useLackWords()(lack);
  return (
    <label className="lack-read">
      <input
        type="checkbox"
        data-read={lack.id}
        checked={reading.read.has(lack.id)}
        onChange={({ target }) => reading.turn([lack.id], target.checked)}
      />
      <span>{name}</span>
    </label>
  );
};

/** What a gate lacks, sort by sort, with who holds each. */
export const LackList = ({ lacks, unnamed, reading }: LackListProps): ReactElement => {
  const { say } = useWords();
  const { floor } = useProof();
  const id = useId();
  return (
    <div className="lack-list">
      {groupedLacks(lacks, floor).map(({ of, lacks: own, holder }) => {
        const ids = own.map((lack) => lack.id);
        return (
          <section key={of} data-group={of} aria-labelledby={`${id}${of}`}>
            <h4 id={`${id}${of}`}>
              {say('gates.group', { sort: say(`proof.${of}`), n: own.length })}
              <span className="quiet"> {say('gates.holder', { holder: say(`proof.holder.${holder}`) })}</span>
            </h4>
            <ul>
              {own.map((lack) => (
                <li key={lack.id} data-lack={lack.id}>
                  {reading === undefined ? (
                    <LackLink lack={lack} />
                  ) : (
                    <ReadLack lack={lack} reading={reading} />
                  )}
                  {lack.holder !== holder && (
                    <span className="quiet">
                      {' '}
                      {say('gates.holder', { holder: say(`proof.holder.${lack.holder}`) })}
                    </span>
                  )}
                  {unnamed?.has(lack.id) && <b className="short"> {say('gates.unnamed.one')}</b>}
                </li>
              ))}
            </ul>
            {reading !== undefined && own.length > 1 && (
              <label className="lack-read lack-all">
                <input
                  type="checkbox"
                  data-read-all={of}
                  checked={ids.every((each) => reading.read.has(each))}
                  onChange={({ target }) => reading.turn(ids, target.checked)}
                />
                <span>{say('gates.read.all', { n: own.length })}</span>
              </label>
            )}
          </section>
        );
      })}
    </div>
  );
};
