import { type ReactElement, useState } from 'react';
import { exportRecords } from '../../../record/record-file.ts';
import { readRecords } from '../../commands/read-records.ts';
import { saveAs } from '../../shell/save-as.ts';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';

/** The last record of every device: what the other party keeps, so that nothing is cut off or written anew unseen. */
export const HeadsPart = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = usePagePart((state) => state.id);
  const { heads } = useKeptRecords();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState('');
  if (heads.length === 0) return <p className="quiet">{say('gates.heads.none')}</p>;
  /** Every record of the server as a file; nothing, with the reason said, where it does not answer. */
  const file = async (): Promise<string | undefined> => {
    setBusy(true);
    const all = await readRecords(page, id);
    setBusy(false);
    const why = all === 'unreachable' ? say('records.unreachable') : 'refused' in all ? all.refused : '';
    setRefused(why);
    return typeof all === 'object' && 'records' in all ? exportRecords(id, all.records) : undefined;
  };
  const save = async (name: string, part: (text: string) => string): Promise<void> => {
    const text = await file();
    if (text !== undefined) saveAs(name, part(text), 'text/plain');
  };
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
          disabled={busy}
          onClick={() => void save(`${id}.heads`, (text) => `${text.split('\n', 1)[0]}\n`)}
        >
          {say('gates.heads.save')}
        </button>
        <button
          type="button"
          data-act="save-records"
          disabled={busy}
          onClick={() => void save(`${id}.records`, (text) => text)}
        >
          {say('gates.records.save')}
        </button>
      </p>
      <p role="alert" className="problem">
        {refused}
      </p>
    </>
  );
};
