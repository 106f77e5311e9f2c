import { type ReactElement, useState } from 'react';
import { languageOf } from '../../../text/index.ts';
import { saveAs } from '../../shell/save-as.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';

/** What became of the file that was saved. */
interface Made {
  readonly digest: string;
  readonly included: number;
  readonly leftOut: readonly { readonly sha256: string; readonly why: string }[];
}

/** The file for a witness far away: the server makes it out of all that it has, so that its heads are those of all. */
export const WitnessPart = (): ReactElement => {
  const page = usePage();
  const { say, translation } = page.words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { waiting } = useKeptRecords();
  const [refused, setRefused] = useState('');
  const [busy, setBusy] = useState(false);
  const [made, setMade] = useState<Made>();
  const make = async (): Promise<void> => {
    setBusy(true);
    const reply = await page.client('makeWitness', {
      params: { id },
      query: {
        language: languageOf(translation?.language ?? 'en'),
        ...(units === 'book' ? {} : { units }),
      },
    });
    setBusy(false);
    if (!reply.ok) {
      setRefused(reply.reached ? reply.failure.message : say('records.unreachable'));
      return;
    }
    setRefused('');
    const { html, ...rest } = reply.value;
    saveAs(`${id}-witness.html`, html, 'text/html');
    setMade(rest);
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
              {say('send.witness.made', { digest: made.digest, n: made.included })}
            </p>
            {made.leftOut.length > 0 && (
              <ul className="small">
                {made.leftOut.map(({ sha256, why }) => (
                  <li key={sha256}>{say(`send.leftOut.${why}`, { digest: sha256.slice(0, 12) })}</li>
                ))}
              </ul>
            )}
          </>
        )}
      </div>
    </section>
  );
};
