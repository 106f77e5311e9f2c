import type { ReactElement } from 'react';
import { routes } from '../../../server/api.ts';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';

/** The last record of every device: what the other party keeps, so that nothing is cut off or written anew unseen. */
export const HeadsPart = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { heads } = useKeptRecords();
  if (heads.length === 0) return <p className="quiet">{say('gates.heads.none')}</p>;
  const file = routes.readRecordFile.path.replace(':id', encodeURIComponent(id));
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
        <a className="link" data-act="save-heads" href={`${file}?part=heads`} download>
          {say('gates.heads.save')}
        </a>
        <a className="link" data-act="save-records" href={file} download>
          {say('gates.records.save')}
        </a>
      </p>
    </>
  );
};
