import type { ReactElement } from 'react';
import { type BoxLacks, energisingLacks } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import { JoinLink } from '../join-link.tsx';
import { useJoins } from '../with-joins.tsx';

/** Beyond this many the joins of one reason are counted: a list of hundreds is no list. */
const mostNamed = 12;

/** What keeps one box from being energised, by its reasons; the first of each are at hand. */
export const BoxPart = ({ box, joins, lacks }: BoxLacks): ReactElement => {
  const { say } = useWords();
  const { byTag, book } = useJoins();
  const name = book.line?.boxes?.find(({ tag }) => tag === box)?.name;
  return (
    <li className="box-lacks" data-box={box ?? ''} data-lacks={lacks.length}>
      <h4>
        {box ?? say('joining.box.none')}
        {name !== undefined && <span className="quiet"> {name}</span>}
      </h4>
      {lacks.length === 0 ? (
        <p>{say('joining.box.recorded', { n: joins.length })}</p>
      ) : (
        <ul>
          {energisingLacks.map((why) => {
            const of = lacks.filter((lack) => lack.why === why);
            if (of.length === 0) return null;
            return (
              <li key={why} data-why={why}>
                <details>
                  <summary>{say('joining.lack', { why: say(`joins.lack.${why}`), n: of.length })}</summary>
                  <ul className="join-names">
                    {of.slice(0, mostNamed).map(({ join }) => {
                      const laid = byTag.get(join);
                      return <li key={join}>{laid === undefined ? join : <JoinLink join={laid} />}</li>;
                    })}
                  </ul>
                  {of.length > mostNamed && (
                    <p className="small quiet">{say('joining.more', { n: of.length - mostNamed })}</p>
                  )}
                </details>
              </li>
            );
          })}
        </ul>
      )}
    </li>
  );
};
