import { type FormEvent, type ReactElement, useEffect, useId, useRef, useState } from 'react';
import { keepTrial, putBack } from '../commands/try-remedy.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import type { Trial } from '../state/page-state.ts';
import { GoLink } from './go-link.tsx';
import { compareAddress } from './route.ts';

/** A remedy on trial stays in sight until it is kept, with the reason why, or put back. */
export const TrialNotice = ({ trial }: { readonly trial: Trial }): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { say } = page.words;
  const input = useId();
  const [asked, ask] = useState(false);
  const [why, setWhy] = useState('');
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (asked) field.current?.focus();
  }, [asked]);
  const keep = (event: FormEvent): void => {
    event.preventDefault();
    keepTrial(page, why.trim());
  };
  return (
    <div className="notice stays" role="status">
      <p>
        <b>{say('trial.title', { label: trial.label })}</b>
      </p>
      <GoLink to={compareAddress(id, { right: 'trial' })}>{say('trial.compare')}</GoLink>
      {!asked && (
        <button type="button" onClick={() => ask(true)}>
          {say('trial.keep')}
        </button>
      )}
      <button type="button" onClick={() => putBack(page)}>
        {say('trial.putBack')}
      </button>
      {asked && (
        <form className="keep-why" onSubmit={keep}>
          <label htmlFor={input}>{say('trial.why')}</label>
          <input
            id={input}
            ref={field}
            type="text"
            maxLength={300}
            value={why}
            placeholder={say('trial.why.hint')}
            onChange={(event) => setWhy(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Escape') ask(false);
            }}
          />
          <button type="submit">{say('trial.keepNow')}</button>
          <button type="button" onClick={() => ask(false)}>
            {say('trial.notYet')}
          </button>
        </form>
      )}
    </div>
  );
};
