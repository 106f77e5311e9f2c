import { type ReactElement, useState } from 'react';
import { FormEnd } from '../../proof/form-end.tsx';
import { AttachField } from '../../proof/media/attach-field.tsx';
import { mediaDrafts } from '../../proof/media/media-drafts.ts';
import { keepPerson } from '../../proof/person.ts';
import { TextField } from '../../proof/text-field.tsx';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { placementRecords } from './placement-draft.ts';
import type { Placements } from './use-placements.ts';

/** A photograph is taken or chosen, and what was placed is written down with who placed it. */
export const DeskForm = ({
  box,
  placements: { draft, sign, attach, forget },
  done,
}: {
  readonly box: string;
  readonly placements: Placements;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { floor } = useJoins();
  const { write } = useKeptRecords();
  const [pressed, setPressed] = useState(false);
  const [refused, setRefused] = useState('');
  const { moves, attached } = draft;
  const send = (): void => {
    setPressed(true);
    const by = draft.by.trim();
    if (by === '') return;
    const wrong = write([
      ...mediaDrafts(page, attached, { of: [box], by, floor }),
      ...placementRecords(page, draft, { box, floor }),
    ]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by);
    forget();
    setPressed(false);
    done(say('joining.desk.written', { n: moves.length }));
  };
  return (
    <form
      className="desk-form"
      noValidate
      aria-label={say('joining.desk.form', { box })}
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <AttachField attached={attached} change={attach} />
      {moves.length + attached.length > 0 && (
        <>
          <TextField
            name="by"
            label={say('joining.field.by')}
            value={draft.by}
            problem={pressed && draft.by.trim() === '' ? say('joining.missing.by') : undefined}
            autoComplete="name"
            change={sign}
          />
          <FormEnd
            write={say('joining.desk.write', { n: moves.length })}
            act="write-places"
            className="mark-write"
            refused={refused}
          />
        </>
      )}
    </form>
  );
};
