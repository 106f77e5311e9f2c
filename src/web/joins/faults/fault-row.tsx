import type { ReactElement } from 'react';
import { endText, faultSentence, type JoinFault } from '../../../joins/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { JoinLink } from '../join-link.tsx';
import { useJoins } from '../with-joins.tsx';

/** What does not fit together, with both ends of each join that it is about and a door to where it is put right. */
export const FaultRow = ({ fault }: { readonly fault: JoinFault }): ReactElement => {
  const { code, path, ends } = fault;
  const { say } = useWords();
  const book = usePagePart((state) => state.id);
  const { byTag } = useJoins();
  const joins = [...new Set(ends.map(({ join }) => join))];
  return (
    <li className="fault-row" data-fault={code}>
      <h3>{faultSentence(fault, say)}</h3>
      <ul>
        {joins.map((join) => {
          const laid = byTag.get(join);
          const [from, to] = ends.filter((end) => end.join === join).map((end) => endText(end, say));
          return (
            <li key={join} className="fault-ends">
              {laid === undefined ? join : <JoinLink join={laid} />}
              <span>
                <b>{from}</b> {to !== undefined && say('joining.fault.to', { to })}
              </span>
            </li>
          );
        })}
      </ul>
      {path !== '' && <GoLink to={bookPageAddress(book, path)}>{say('joining.fault.door')}</GoLink>}
    </li>
  );
};
