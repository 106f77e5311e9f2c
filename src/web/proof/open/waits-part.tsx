import { type ReactElement, useState } from 'react';
import { isOver } from '../../../proof/index.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { QuarantineLine } from './quarantine-line.tsx';
import { WaitRow } from './wait-row.tsx';

/** What others own, that which moves the signature first; what is over stands behind it. */
export const WaitsPart = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { proof, floor } = useProof();
  const [told, setTold] = useState('');
  const own = proof.waits.filter((wait) => wait.floor === floor.floor);
  const moving = (tag: string): number => (floor.days.moving.includes(tag) ? 0 : 1);
  const open = own.filter((wait) => !isOver(wait)).toSorted((a, b) => moving(a.wait) - moving(b.wait));
  const over = own.filter(isOver);
  return (
    <section className="open-part" data-part="waits">
      <h3>{say('open.waits')}</h3>
      {own.length === 0 && (
        <p className="quiet">
          {say('open.waits.none')}{' '}
          <GoLink to={bookPageAddress(id, '/waits')}>{say('open.waits.write')}</GoLink>
        </p>
      )}
      {own.length > 0 && open.length === 0 && <p className="quiet">{say('open.waits.over')}</p>}
      <ul>
        {open.map((wait) => (
          <WaitRow key={wait.wait} wait={wait} told={setTold} />
        ))}
      </ul>
      <QuarantineLine />
      <p role="status">{told}</p>
      {over.length > 0 && (
        <details>
          <summary>{say('open.waits.there', { n: over.length })}</summary>
          <ul>
            {over.map((wait) => (
              <WaitRow key={wait.wait} wait={wait} told={setTold} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};
