import { type ReactElement, useState } from 'react';
import { keyFingerprint } from '../../../record/fingerprint.ts';
import { saveAs } from '../../shell/save-as.ts';
import { keyListFile } from '../../state/known-keys.ts';
import { forgetKey } from '../../state/own-key.ts';
import { usePage } from '../../state/page-context.ts';
import { keyFile } from '../../state/sealed-key.ts';
import { KeyForm } from './key-form.tsx';
import type { Keys } from './use-keys.ts';

const json = 'application/json';

/** The keys that are signed with in this browser: to be kept elsewhere too, and to be read out to the other party. */
export const OwnKeys = ({ keys }: { readonly keys: Keys }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const [making, setMaking] = useState(false);
  const [leaving, setLeaving] = useState<string>();
  const [told, setTold] = useState('');
  return (
    <section data-part="own-keys">
      <h4>{say('gates.own')}</h4>
      {keys.own.length === 0 && <p className="quiet">{say('gates.own.none')}</p>}
      <ul>
        {keys.own.map((key) => (
          <li key={key.key} className="open-row" data-own-key={key.key}>
            <p>
              <b>{say('gates.key.of', { by: key.by, role: key.role })}</b>{' '}
              <span className="fingerprint">{keyFingerprint(key.key)}</span>
            </p>
            <p className="proof-acts">
              <button
                type="button"
                data-act="save-key"
                onClick={() => saveAs(say('gates.key.file', { by: key.by }), keyFile(key), json)}
              >
                {say('gates.key.save')}
              </button>
              {leaving === key.key ? (
                <>
                  <span className="short">{say('gates.key.forget.sure')}</span>
                  <button
                    type="button"
                    data-act="forget-key"
                    onClick={() => {
                      forgetKey(page, key.key);
                      setLeaving(undefined);
                      setTold(say('gates.key.forgotten', { by: key.by }));
                      keys.look();
                    }}
                  >
                    {say('gates.key.forget.yes')}
                  </button>
                  <button type="button" className="link" onClick={() => setLeaving(undefined)}>
                    {say('open.leave')}
                  </button>
                </>
              ) : (
                <button type="button" className="link" onClick={() => setLeaving(key.key)}>
                  {say('gates.key.forget')}
                </button>
              )}
            </p>
          </li>
        ))}
      </ul>
      {making ? (
        <KeyForm
          keys={keys}
          made={(key) => {
            setMaking(false);
            setTold(say('gates.key.kept', { by: key.by }));
          }}
        />
      ) : (
        <p className="proof-acts">
          <button type="button" data-act="make-key" onClick={() => setMaking(true)}>
            {say('gates.key.new')}
          </button>
          {keys.own.length > 0 && (
            <button
              type="button"
              className="link"
              data-act="save-key-list"
              onClick={() => saveAs(say('gates.list.file'), keyListFile(keys.own), json)}
            >
              {say('gates.list.save')}
            </button>
          )}
        </p>
      )}
      <p role="status">{told}</p>
    </section>
  );
};
