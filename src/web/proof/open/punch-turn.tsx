import { type FormEvent, type ReactElement, useRef, useState } from 'react';
import type { PunchPoint } from '../../../proof/punch-points.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { FormEnd } from '../form-end.tsx';
import { AttachField } from '../media/attach-field.tsx';
import { mediaDrafts } from '../media/media-drafts.ts';
import { keepPerson, lastPerson } from '../person.ts';
import { RecordForm } from '../record-form.tsx';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import { punchDraft, saidOf } from './punch-draft.ts';

/** An open point is put right, with how and with what to show for it; one that was put right is opened anew, with why. */
export const PunchTurn = ({
  point,
  done,
}: {
  readonly point: PunchPoint;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { floor } = useProof();
  const { write } = useKeptRecords();
  const form = useRef<HTMLFormElement>(null);
  const [why, setWhy] = useState('');
  const [by, setBy] = useState(() => lastPerson(page));
  const [attached, setAttached] = useState<readonly AttachedMedia[]>([]);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  const to = point.state === 'open' ? 'closed' : 'open';
  // a picture of it tells how it was put right; that it is open anew wants words
  const lacksWhy = why.trim() === '' && (to === 'open' || attached.length === 0);
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (lacksWhy || by.trim() === '') {
      form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const evidence = attached.map(({ sha256 }) => sha256);
    const wrong = write([
      ...mediaDrafts(page, attached, { of: point.of, by: by.trim(), floor: floor.floor }),
      punchDraft(page, { ...saidOf(point), state: to, by, why, evidence }),
    ]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    done(say(`open.punch.turned.${to}`, { point: point.point }));
  };
  return (
    <RecordForm
      className="punch-form"
      form={form}
      send={send}
      label={say(`open.punch.turn.${to}`, { point: point.point })}
      leave={() => done('')}
    >
      <TextField
        name="why"
        label={say(`open.field.why.${to}`)}
        rows={2}
        value={why}
        problem={asked && lacksWhy ? say(`open.missing.why.${to}`) : undefined}
        change={setWhy}
      />
      <TextField
        name="by"
        label={say('open.field.by')}
        value={by}
        problem={asked && by.trim() === '' ? say('open.missing.by') : undefined}
        change={setBy}
      />
      <AttachField attached={attached} change={setAttached} />
      <FormEnd
        write={say(`open.punch.turn.write.${to}`)}
        leave={{ text: say('open.leave'), press: () => done('') }}
        refused={refused}
      />
    </RecordForm>
  );
};
