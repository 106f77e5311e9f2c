import { type ReactElement, useMemo } from 'react';
import { headsOf } from '../../../record/heads.ts';
import { exportRecords } from '../../../record/record-file.ts';
import { saveAs } from '../../shell/save-as.ts';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';

/** The last record of every device: what the other party keeps, so that nothing is cut off or written anew unseen. */
export const HeadsPart = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { records, waiting, load } = useKeptRecords();
  const sent = useMemo(() => records.filter((record) => !waiting.has(record.id)), [records, waiting]);
  const heads = useMemo(() => headsOf(sent), [sent]);
  if (load === 'part') return <p className="quiet">{say('proving.part.wait')}</p>;
  if (heads.length === 0) return <p className="quiet">{say('gates.heads.none')}</p>;
  const file = (): string => exportRecords(id, sent);
  return (
    <>
      <p>{say('gates.heads.about')}</p>
      <ScrollRegion label={say('gates.heads')}>
        <table className="heads-table">
          <thead>
            <tr>
              <th scope="col">{say('gates.heads.writer')}</th>
              <th scope="col">{say('gates.heads.records')}</th>
              <th scope="col" className="words">
                {say('gates.heads.hash')}
              </th>
            </tr>
          </thead>
          <tbody>
            {heads.map(({ writer, sequence, hash }) => (
              <tr key={writer} data-head={writer}>
                <th scope="row">{writer}</th>
                <td>{sequence + 1}</td>
                <td className="words hash">{hash}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      <p className="proof-acts">
        <button
          type="button"
          data-act="save-heads"
          onClick={() => saveAs(`${id}.heads`, `${file().split('\n', 1)[0]}\n`, 'text/plain')}
        >
          {say('gates.heads.save')}
        </button>
        <button
          type="button"
          data-act="save-records"
          onClick={() => saveAs(`${id}.records`, file(), 'text/plain')}
        >
          {say('gates.records.save')}
        </button>
      </p>
    </>
  );
};
