import { type FormEvent, type ReactElement, useId, useState } from 'react';
import type { AsideRevision, RevisionSummary } from '../../server/api.ts';
import { followNewest } from '../commands/settle-conflict.ts';
import { FormEnd } from '../proof/form-end.tsx';
import { keepPerson, lastPerson } from '../proof/person.ts';
import { TextField } from '../proof/text-field.tsx';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';

type Holds = 'here' | 'aside';

/** Which of two revisions holds, why and by whom: a record; what was kept aside is then saved as the next revision. */
export const HoldForm = ({
  aside,
  here,
  isSaved,
  done,
}: {
  readonly aside: AsideRevision;
  readonly here: RevisionSummary;
  /** The text that was kept aside stands among the revisions already. */
  readonly isSaved: boolean;
  readonly done: () => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = usePagePart((state) => state.id);
  const newest = usePagePart((state) => state.revision);
  const { write } = useKeptRecords();
  const group = useId();
  const [holds, setHolds] = useState<Holds>();
  const [why, setWhy] = useState('');
  const [by, setBy] = useState(() => lastPerson(page));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  const { number, author } = aside;

  /** Why the text could not be saved as the next revision, if it could not. */
  const saveAside = async (): Promise<string | undefined> => {
    const read = await page.client('readAside', { params: { id, sha256: aside.sha256 } });
    const reason = say('compare.aside.why', { n: number, author, why: why.trim() });
    const reply = read.ok
      ? await page.client('saveRevision', {
          params: { id },
          body: { text: read.value.text, basedOn: newest, author: page.author, reason },
        })
      : read;
    if (reply.ok) return undefined;
    return reply.reached ? reply.failure.message : say('compare.unread');
  };
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setAsked(true);
    if (holds === undefined || why.trim() === '' || by.trim() === '') return;
    const wrong = holds === 'aside' && !isSaved ? await saveAside() : undefined;
    if (wrong !== undefined) return setRefused(wrong);
    const [holding, over] = holds === 'aside' ? [aside, here] : [here, aside];
    const body = { number, holds: holding.sha256, over: over.sha256, why: why.trim(), by: by.trim() };
    const unfit = write([{ id: page.newId(), kind: 'revision', version: 1, at: page.now(), body }]);
    if (unfit !== undefined) return setRefused(unfit);
    keepPerson(page, by.trim());
    done();
    if (holds === 'aside') await followNewest(page);
  };
  const missing = (text: string): string | undefined =>
    asked && text.trim() === '' ? say('compare.aside.missing') : undefined;
  return (
    <form
      className="punch-form"
      noValidate
      onSubmit={(event) => void send(event)}
      aria-label={say('compare.aside.say')}
    >
      <fieldset className="punch-keeps">
        <legend>{say('compare.aside.say')}</legend>
        {(['here', 'aside'] as const).map((one) => (
          <label key={one}>
            <input
              type="radio"
              name={group}
              value={one}
              checked={holds === one}
              data-holds={one}
              onChange={() => setHolds(one)}
            />{' '}
            {one === 'here'
              ? say('compare.aside.here', { n: here.number })
              : say(isSaved ? 'compare.aside.that' : 'compare.aside.save', { n: number, author })}
          </label>
        ))}
      </fieldset>
      <TextField
        name="why"
        label={say('compare.aside.reason')}
        value={why}
        problem={missing(why)}
        change={setWhy}
      />
      <TextField name="by" label={say('compare.aside.by')} value={by} problem={missing(by)} change={setBy} />
      <FormEnd
        write={say('compare.aside.write')}
        act="write-holds"
        leave={{ text: say('compare.aside.leave'), press: done }}
        refused={asked && holds === undefined ? say('compare.aside.missing.holds') : refused}
      />
    </form>
  );
};
