import { type ReactElement, useState } from 'react';
import { beginsAsZip } from '../../../archive/begins-as-zip.ts';
import { archiveProblem } from '../../../archive/problems.ts';
import { routes } from '../../../server/api.ts';
import type { Reply } from '../../../server/client.ts';
import { followNewest } from '../../commands/settle-conflict.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { compareAddress, proofAddress } from '../../shell/route.ts';
import { useWaitingMedia } from '../../state/kept-media.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { FileDoor } from '../file-door.tsx';

type Taken = Extract<Reply<'joinArchive'>, { readonly ok: true }>['value'];

/** What became of an archive, sort by sort, and what a person should look at. */
const TakenReport = ({ taken }: { readonly taken: Taken }): ReactElement => {
  const { say } = usePage().words;
  const id = usePagePart((state) => state.id);
  const { book, revisions, records, media, told, sentences } = taken;
  const left = told.some(({ code }) => code.startsWith('ARCHIVE_RECORDS_'));
  return (
    <div data-taken={book}>
      {book === id ? (
        <p>{say('send.archive.taken')}</p>
      ) : (
        <p>
          {say('send.archive.other')} <GoLink to={proofAddress(book)}>{book}</GoLink>
        </p>
      )}
      <ul>
        <li>{say('send.archive.revisions', revisions)}</li>
        <li>{say(left ? 'send.archive.records.left' : 'send.archive.records', records)}</li>
        {media.added + media.known > 0 && <li>{say('send.archive.media', media)}</li>}
      </ul>
      {revisions.aside > 0 && book === id && (
        <p>
          <GoLink to={compareAddress(id)}>{say('send.archive.aside')}</GoLink>
        </p>
      )}
      {sentences.length > 0 && (
        <>
          <h4>{say('send.archive.look')}</h4>
          <ul className="short">
            {sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
};

/** The whole book as one file: out for another laptop, and in from one, where the two become the union of both. */
export const ArchivePart = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = usePagePart((state) => state.id);
  const { waiting, readAgain } = useKeptRecords();
  const files = useWaitingMedia(page).size;
  const [busy, setBusy] = useState(false);
  const [taken, setTaken] = useState<Taken>();
  const [refused, setRefused] = useState('');
  const take = async (file: File): Promise<void> => {
    setBusy(true);
    setTaken(undefined);
    setRefused('');
    // a film that was taken for one is not sent first
    if (!beginsAsZip(new Uint8Array(await file.slice(0, 4).arrayBuffer()))) {
      setBusy(false);
      setRefused(page.words.problem(archiveProblem('ARCHIVE_NOT_ZIP', '')));
      return;
    }
    // what a browser calls a zip differs from one system to the next
    const bytes = new Blob([file], { type: 'application/zip' });
    const reply = await page.client('joinArchive', { bytes });
    setBusy(false);
    if (reply.ok) {
      setTaken(reply.value);
      readAgain();
      await followNewest(page);
    } else {
      setRefused(reply.reached ? reply.failure.message : say('send.archive.away'));
    }
  };
  return (
    <section className="open-part" data-part="archive">
      <h3>{say('send.archive')}</h3>
      <p>{say('send.archive.about')}</p>
      {waiting.size + files > 0 && (
        <p className="short">{say('send.archive.waiting', { n: waiting.size, files })}</p>
      )}
      <p className="proof-acts">
        <a
          className="link"
          data-act="save-archive"
          href={routes.readArchive.path.replace(':id', encodeURIComponent(id))}
          download
        >
          {say('send.archive.save')}
        </a>
        <FileDoor
          name="archive"
          label={say('send.archive.choose')}
          accept=".zip"
          disabled={busy}
          take={(file) => void take(file)}
        />
      </p>
      <div role="status">
        {busy && <p>{say('send.archive.taking')}</p>}
        {taken !== undefined && <TakenReport taken={taken} />}
      </div>
      <p role="alert" className="problem">
        {refused}
      </p>
    </section>
  );
};
