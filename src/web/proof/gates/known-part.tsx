import { type ReactElement, useState } from 'react';
import { keyFingerprint } from '../../../record/fingerprint.ts';
import { forgetKnownKey, keysAgainst, readKeyList } from '../../state/known-keys.ts';
import { usePage } from '../../state/page-context.ts';
import { TextFileDoor } from '../text-file-door.tsx';
import type { Keys } from './use-keys.ts';

/** The keys of the others: a file names them, and only digits that were read out make them theirs. */
export const KnownPart = ({ keys }: { readonly keys: Keys }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const [told, setTold] = useState('');
  const take = (text: string): void => {
    const list = readKeyList(text);
    if (list === undefined) {
      setTold(say('gates.list.strange'));
      return;
    }
    const { fresh, renamed } = keysAgainst([...keys.known, ...keys.own], list);
    keys.tell(fresh);
    setTold(
      [
        say('gates.list.taken', { n: fresh.length }),
        // a known key under another name is the one thing that a forger would try
        ...(renamed.length === 0
          ? []
          : [say('gates.list.renamed', { names: renamed.map(({ by }) => by).join(', ') })]),
      ].join(' '),
    );
  };
  return (
    <section data-part="known-keys">
      <h4>{say('gates.known')}</h4>
      <p className="small quiet">{say('gates.known.about')}</p>
      <ul>
        {keys.known.map((one) => (
          <li key={one.key} className="open-row" data-known-key={one.key}>
            <p>
              <b>{say('gates.key.of', { by: one.by, role: one.role })}</b>{' '}
              <span className="fingerprint">{keyFingerprint(one.key)}</span>
            </p>
            <p className="proof-acts">
              <label className="lack-read">
                <input
                  type="checkbox"
                  data-compared={one.key}
                  checked={one.compared === true}
                  onChange={({ target }) => keys.tell([{ ...one, compared: target.checked }])}
                />
                <span>{say('gates.known.compared', { by: one.by })}</span>
              </label>
              <button
                type="button"
                className="link"
                onClick={() => {
                  forgetKnownKey(page, one.key);
                  setTold(say('gates.key.forgotten', { by: one.by }));
                  keys.look();
                }}
              >
                {say('gates.known.forget', { by: one.by })}
              </button>
            </p>
          </li>
        ))}
      </ul>
      <p className="proof-acts">
        <TextFileDoor name="key-list" label={say('gates.list.take')} accept=".json" take={take} />
        <span role="status">{told}</span>
      </p>
    </section>
  );
};
