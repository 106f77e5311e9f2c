import { type ReactElement, useMemo, useState } from 'react';
import { type Bypass, bypassesOf } from '../../../record/bypasses.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { dayText } from '../day-text.ts';
import { keepPerson, lastPerson } from '../person.ts';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import { bypassDraft } from './bypass-draft.ts';
import { BypassForm } from './bypass-form.tsx';
import { useRegister } from './with-register.tsx';

/** One thing that is forced or bypassed, and the record of its reverse. */
const BypassRow = ({ bypass }: { readonly bypass: Bypass }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { floor } = useProof();
  const { says } = useRegister();
  const { write } = useKeptRecords();
  const [by, setBy] = useState(() => lastPerson(page));
  const [refused, setRefused] = useState('');
  const { removed } = bypass;
  const about = { of: says.thing(bypass.of), why: bypass.why ?? say('settings.bypass.nowhy') };
  const remove = (): void => {
    if (by.trim() === '') {
      setRefused(say('settings.bypass.missing.by'));
      return;
    }
    const { bypass: id, of } = bypass;
    const wrong = write([bypassDraft(page, { bypass: id, of, state: 'removed', by, floor: floor.floor })]);
    setRefused(wrong ?? '');
    if (wrong === undefined) keepPerson(page, by.trim());
  };
  const day = (at: string): string => dayText(page.words, at.slice(0, 10));
  if (removed !== undefined) {
    return (
      <li className="quiet" data-bypass={bypass.bypass} data-state="removed">
        {say('settings.bypass.out', { ...about, by: removed.by, at: day(removed.at) })}
      </li>
    );
  }
  return (
    <li className="punch-row" data-bypass={bypass.bypass} data-state="made">
      <strong>{say('settings.bypass.in', about)}</strong>{' '}
      <span className="quiet small">
        {say('settings.bypass.made', { by: bypass.by, at: day(bypass.at) })}
      </span>
      <div className="bypass-out">
        <TextField
          name="by"
          label={say('settings.bypass.by')}
          value={by}
          change={setBy}
          problem={refused === '' ? undefined : refused}
        />
        <button type="button" data-act="remove-bypass" onClick={remove}>
          {say('settings.bypass.remove')}
        </button>
      </div>
    </li>
  );
};

/** What is forced or bypassed for a test; each keeps every gate until its reverse is written down. */
export const BypassPart = (): ReactElement => {
  const { say } = usePage().words;
  const { records } = useKeptRecords();
  const bypasses = useMemo(() => bypassesOf(records), [records]);
  const [isOpen, setOpen] = useState(false);
  const isIn = bypasses.some(({ removed }) => removed === undefined);
  return (
    <section className="open-part" data-part="bypass">
      <h3>{say('settings.bypass')}</h3>
      {bypasses.length === 0 && <p className="quiet">{say('settings.bypass.none')}</p>}
      {isIn && <p className="short">{say('settings.bypass.holds')}</p>}
      <ul>
        {bypasses.map((one) => (
          <BypassRow key={one.bypass} bypass={one} />
        ))}
      </ul>
      {isOpen ? (
        <BypassForm done={() => setOpen(false)} />
      ) : (
        <button type="button" data-act="add-bypass" onClick={() => setOpen(true)}>
          {say('settings.bypass.add')}
        </button>
      )}
    </section>
  );
};
