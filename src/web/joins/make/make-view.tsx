import type { ReactElement } from 'react';
import { findCode } from '../../../joins/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { joinsAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { CodeForm } from './code-form.tsx';
import { JoinCard } from './join-card.tsx';

/** At the box, with a label in one hand: its code, both ends, and how it stands now. */
export const MakeView = (): ReactElement => {
  const { say } = useWords();
  const book = usePagePart((state) => state.id);
  const { joins, byTag, asked } = useJoins();
  const found = asked === undefined ? undefined : findCode(asked, joins);
  const join = found?.is === 'found' ? byTag.get(found.join) : undefined;
  return (
    <div className="make-view">
      <CodeForm opened={join?.code} />
      {join === undefined ? (
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
