import { type FormEvent, type ReactElement, useId, useRef, useState } from 'react';
import type { JoinState, LaidJoin } from '../../../joins/index.ts';
import { FormEnd } from '../../proof/form-end.tsx';
import { AttachField } from '../../proof/media/attach-field.tsx';
import { mediaDrafts } from '../../proof/media/media-drafts.ts';
import { keepPerson } from '../../proof/person.ts';
import { TextField } from '../../proof/text-field.tsx';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { StateShape } from '../state-shape.tsx';
import { useJoins } from '../with-joins.tsx';
import {
  forgetMark,
  keepMark,
  keptMark,
  type MarkDraft,
  type MarkLack,
  type MarkText,
  markLacks,
  markRecord,
  marks,
} from './mark-draft.ts';
import { methodNamed, methods, readingOf } from './methods.ts';

/** How the join stands now: made, tested with what was read, or in trouble; kept by this browser at once. */
export const MarkForm = ({
  join,
  state,
  done,
}: {
  readonly join: LaidJoin;
  readonly state: JoinState | undefined;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const book = usePagePart((one) => one.id);
  const { floor } = useJoins();
  const { write } = useKeptRecords();
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const of = { book, join: join.tag };
  const [draft, setDraft] = useState(() => keptMark(page, of));
  const [pressed, setPressed] = useState(false);
  const [refused, setRefused] = useState('');
  const { texts } = draft;
  const reading = readingOf(texts.reading, texts.method, page.words);
  const lacks = markLacks(draft, reading);
  const change = (part: Partial<MarkDraft>): void => {
    const next = { ...draft, ...part };
    setDraft(next);
    keepMark(page, of, next);
  };
  const type = (name: MarkText, text: string): void => change({ texts: { ...texts, [name]: text } });
  const missing = (lack: MarkLack): string | undefined =>
    pressed && lacks.includes(lack) ? say(`joining.missing.${lack}`) : undefined;
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setPressed(true);
    if (lacks.length > 0) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const by = texts.by.trim();
    const wrong = write([
      ...mediaDrafts(page, draft.attached, { of: [join.tag], by, floor }),
      markRecord(page, draft, {
        join: join.tag,
        floor,
        reading,
        // what the person had before them: who writes at the same moment follows none of it
        follows: state?.last.map((record) => record.id) ?? [],
      }),
    ]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by);
    forgetMark(page, of, draft);
    setDraft(keptMark(page, of));
    setPressed(false);
    if (draft.state !== '')
      done(say('joining.written', { join: join.tag, state: say(`joins.state.${draft.state}`) }));
  };
  const unit = methodNamed(texts.method)?.unit;
  return (
    <form className="mark-form" ref={form} noValidate onSubmit={send} aria-label={say('joining.mark')}>
      <fieldset className="mark-keys">
        <legend>{say('joining.mark')}</legend>
        {marks.map((one, i) => (
          <button
            key={one}
            type="button"
            data-mark={one}
            aria-pressed={draft.state === one}
            {...(i === 0 && missing('state') !== undefined ? { 'aria-describedby': `${id}s` } : {})}
            onClick={() => change({ state: draft.state === one ? '' : one })}
          >
            <StateShape state={one} /> {say(`joins.state.${one}`)}
          </button>
        ))}
        {missing('state') !== undefined && (
          <span className="problem" id={`${id}s`} role="alert">
            {missing('state')}
          </span>
        )}
      </fieldset>
      <div className="proof-field">
        <label htmlFor={`${id}m`}>{say('joining.field.method')}</label>
        <select
          id={`${id}m`}
          data-field="method"
          value={texts.method}
          aria-invalid={missing('method') !== undefined}
          onChange={({ target }) => type('method', target.value)}
        >
          <option value="">{say('joining.method.none')}</option>
          {methods.map(({ method }) => (
            <option key={method} value={method}>
              {say(`joining.method.${method}`)}
            </option>
          ))}
        </select>
        {missing('method') !== undefined && (
          <span className="problem" role="alert">
            {missing('method')}
          </span>
        )}
      </div>
      <TextField
        name="reading"
        label={unit === undefined ? say('joining.field.reading') : say('joining.field.reading.in', { unit })}
        value={texts.reading}
        problem={missing('reading')}
        change={(text) => type('reading', text)}
      />
      {texts.method !== '' && (
        <TextField
          name="instrument"
          label={say('joining.field.instrument')}
          value={texts.instrument}
          change={(text) => type('instrument', text)}
        />
      )}
      <TextField
        name="remark"
        label={say(draft.state === 'trouble' ? 'joining.field.trouble' : 'joining.field.remark')}
        rows={2}
        value={texts.remark}
        problem={missing('remark')}
        change={(text) => type('remark', text)}
      />
      <TextField
        name="by"
        label={say('joining.field.by')}
        value={texts.by}
        problem={missing('by')}
        autoComplete="name"
        change={(text) => type('by', text)}
      />
      <AttachField attached={draft.attached} change={(attached) => change({ attached })} />
      <FormEnd write={say('joining.write')} act="write" className="mark-write" refused={refused} />
    </form>
  );
};
