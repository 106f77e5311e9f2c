import { type ReactElement, useState } from 'react';
import { useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { FaultRow } from './fault-row.tsx';
import { ImportPart } from './import-part.tsx';

/** Faults that are laid out at once. */
const mostFaults = 60;

/** What of the list contradicts itself, and the door for lists of the builder's own. */
export const FaultsView = (): ReactElement => {
  const { say } = useWords();
  const { book, faults, joins } = useJoins();
  const [most, setMost] = useState(mostFaults);
  const unsaid =
    book.agreement?.conductorColours === undefined && joins.some(({ kind }) => kind === 'conductor');
  return (
    <div className="faults-view">
      <p className="open-told" data-faults={faults.length}>
        {say('joining.faults', { n: faults.length })}
      </p>
      {unsaid && <p className="small quiet">{say('joining.coloursUnsaid')}</p>}
      <ul>
        {faults.slice(0, most).map((fault, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two faults may be alike in all but their place
          <FaultRow key={`${i} ${fault.code} ${fault.path}`} fault={fault} />
        ))}
      </ul>
      {faults.length > most && (
        <button type="button" data-act="more" onClick={() => setMost(most + mostFaults)}>
          {say('joining.show.more', {
            n: Math.min(mostFaults, faults.length - most),
            left: faults.length - most,
          })}
        </button>
      )}
      <ImportPart />
    </div>
  );
};
