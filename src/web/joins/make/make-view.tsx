import { type ReactElement, useMemo } from 'react';
import { endText, printedCode } from '../../../joins/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { joinsAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { JoinLink } from '../join-link.tsx';
import { useJoins } from '../with-joins.tsx';
import { CodeForm } from './code-form.tsx';
import { JoinCard } from './join-card.tsx';
import { meantJoins } from './meant-joins.ts';

/** At the box, with a label in one hand: its code, both ends, and how it stands now. */
export const MakeView = (): ReactElement => {
  const { say } = useWords();
  const book = usePagePart((state) => state.id);
  const { joins, byTag, asked } = useJoins();
  const meant = useMemo(() => meantJoins(asked, joins, byTag), [asked, joins, byTag]);
  const [join, ...others] = meant;
  return (
    <div className="make-view">
      <CodeForm opened={join?.tag} />
      {join !== undefined && others.length > 0 ? (
        <div className="code-told">
          <p className="problem" data-code="shared">
            {say('joining.code.shared', { code: printedCode(join.code) })}
          </p>
          <ul>
            {meant.map((one) => (
              <li key={one.tag} className="fault-ends">
                <JoinLink join={one} /> {endText(one.from, say)}{' '}
                {say('joining.fault.to', { to: endText(one.to, say) })}
              </li>
            ))}
          </ul>
        </div>
      ) : join === undefined ? (
        <p className="quiet">
          {say('joining.code.hint')}{' '}
          <GoLink to={joinsAddress(book, 'order')}>{say('joining.code.look')}</GoLink>
        </p>
      ) : (
        <JoinCard key={join.tag} join={join} />
      )}
    </div>
  );
};
