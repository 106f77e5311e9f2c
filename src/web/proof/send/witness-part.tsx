import { type ReactElement, useState } from 'react';
import { bookUnits } from '../../../book/book-units.ts';
import { writeBook } from '../../../book/write-book.ts';
import { proofOfBook } from '../../../proof/index.ts';
import { toHex } from '../../../record/hex.ts';
import { sha256 } from '../../../record/sha256.ts';
import { makeWitnessFile, mediaWanted, type WitnessFile } from '../../../witness/index.ts';
import { readRecords } from '../../commands/read-records.ts';
import { saveAs } from '../../shell/save-as.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { gatheredMedia } from './gathered-media.ts';

/** The file for a witness far away: made out of what the server has, so that its heads are those of all. */
export const WitnessPart = (): ReactElement => {
  const page = usePage();
  const { say, translation } = page.words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { book, assessment } = useProof();
  const { waiting } = useKeptRecords();
  const [refused, setRefused] = useState('');
  const [busy, setBusy] = useState(false);
  const [made, setMade] = useState<WitnessFile>();
  const make = async (): Promise<void> => {
    setBusy(true);
    const all = await readRecords(page, id);
    if (all === 'unreachable' || 'refused' in all) {
      setRefused(all === 'unreachable' ? say('records.unreachable') : all.refused);
      setBusy(false);
      return;
    }
    setRefused('');
    const media = await gatheredMedia(
      page,
      id,
      mediaWanted(all.records, proofOfBook(book, assessment, all.records)),
    );
    const file = makeWitnessFile({
      book,
      id,
      revision: page.state.get().revision,
      hash: toHex(sha256(new TextEncoder().encode(writeBook(book)))),
      assessment,
      records: all.records,
      media,
      date: page.now().slice(0, 10),
      translation,
      units: bookUnits(book, units === 'book' ? undefined : units),
    });
    saveAs(`${id}-witness.html`, file.html, 'text/html');
    setMade(file);
    setBusy(false);
  };
  return (
    <section className="open-part" data-part="witness">
      <h3>{say('send.witness')}</h3>
      <p>{say('send.witness.about')}</p>
      {waiting.size > 0 && <p className="quiet">{say('send.witness.waiting', { n: waiting.size })}</p>}
      <p className="proof-acts">
        <button type="button" data-act="make-witness" disabled={busy} onClick={() => void make()}>
          {say(busy ? 'send.witness.making' : 'send.witness.make')}
        </button>
      </p>
      <p role="alert" className="problem">
        {refused}
      </p>
      <div role="status">
        {made !== undefined && (
          <>
            <p data-made={made.digest}>
              {say('send.witness.made', { digest: made.digest, n: made.included.length })}
            </p>
            {made.leftOut.size > 0 && (
              <ul className="small">
                {[...made.leftOut].map(([digest, why]) => (
                  <li key={digest}>{say(`send.leftOut.${why}`, { digest: digest.slice(0, 12) })}</li>
                ))}
              </ul>
            )}
          </>
        )}
      </div>
    </section>
  );
};
