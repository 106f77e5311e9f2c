import { type FormEvent, type ReactElement, useId, useRef, useState } from 'react';
import { readSetting } from '../../../book/index.ts';
import type { RegisterRow, SettingBound } from '../../../proof/settings/index.ts';
import { settingMoments } from '../../../record/setting-moments.ts';
import { KeyPad, pressed } from '../../pad/key-pad.tsx';
import { GoLink } from '../../shell/go-link.tsx';
import { sheetAddress } from '../../shell/route.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { FormEnd } from '../form-end.tsx';
import { AttachField } from '../media/attach-field.tsx';
import { mediaDrafts } from '../media/media-drafts.ts';
import { MediaStrip } from '../media/media-strip.tsx';
import { keepPerson, lastPerson } from '../person.ts';
import { RecordForm } from '../record-form.tsx';
import { TextField } from '../text-field.tsx';
import { settingDraft } from './setting-draft.ts';
import { useRegister } from './with-register.tsx';

/** The sheet behind a bound. */
const BoundDoor = ({ bound }: { readonly bound: SettingBound | undefined }): ReactElement | null => {
  const { say } = usePage().words;
  if (bound?.working === undefined) return null;
  return <GoLink to={sheetAddress(bound.working.sheet)}>{say('settings.bound')}</GoLink>;
};

export interface SettingFormProps {
  readonly one: RegisterRow;
  readonly label: string;
  readonly done: (told: string) => void;
}

/** What a setting reads now, who read it and why it is another; with a picture of the dial where there is one. */
export const SettingForm = ({ one, label, done }: SettingFormProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { says, moment, floorAt } = useRegister();
  const { write } = useKeptRecords();
  const { row, range, at } = one;
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const stands = at[moment];
  const [value, setValue] = useState('');
  const [why, setWhy] = useState('');
  const [remark, setRemark] = useState('');
  const [by, setBy] = useState(() => lastPerson(page));
  const [attached, setAttached] = useState<readonly AttachedMedia[]>([]);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  const read = readSetting(row.form, value, 'value');
  const name = says.name(row);
  const unit = says.unit(row);
  const said = { name, moment: say(`setting.moment.${moment}`), unit };
  const problem = asked && !read.ok ? read.problems.map(page.words.problem).join(' ') : undefined;
  const floor = row.floor ?? floorAt(moment);
  const typed = row.form.is === 'text' || row.form.is === 'digest';
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (!read.ok || by.trim() === '') {
      form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const evidence = attached.map(({ sha256 }) => sha256);
    const about = { of: row.on === undefined ? [] : [row.on], by: by.trim(), floor };
    const wrong = write([
      ...mediaDrafts(page, attached, about),
      settingDraft(page, {
        setting: row.id,
        floor,
        moment,
        value: read.value.text,
        by,
        why,
        remark,
        evidence,
        instead: stands?.record.id,
      }),
    ]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    done(say('settings.written', { name, value: read.value.text }));
  };
  return (
    <RecordForm className="setting-form" form={form} send={send} label={label} leave={() => done('')}>
      <div className="setting-value">
        <div className="proof-field">
          <label htmlFor={id}>{say(unit === '' ? 'settings.value' : 'settings.value.unit', said)}</label>
          <input
            id={id}
            data-field="value"
            className="big"
            // the row was opened to write into it
            // biome-ignore lint/a11y/noAutofocus: the person pressed the row for this
            autoFocus
            autoComplete="off"
            inputMode={typed ? 'text' : 'decimal'}
            value={value}
            placeholder={stands?.text ?? ''}
            aria-invalid={problem !== undefined}
            onChange={({ target }) => setValue(target.value)}
          />
          {problem !== undefined && (
            <span className="problem" role="alert">
              {problem}
            </span>
          )}
        </div>
        <ul className="small quiet">
          {row.designed !== undefined && <li>{say('settings.designed', { value: row.designed })}</li>}
          {settingMoments.flatMap((each) => {
            const before = at[each];
            return before === undefined
              ? []
              : [
                  <li key={each}>
                    {say('settings.before', { moment: say(`setting.moment.${each}`), value: before.text })}
                  </li>,
                ];
          })}
          {says.range(row, range) !== '' && (
            <li>
              {says.range(row, range)} <BoundDoor bound={range.least} /> <BoundDoor bound={range.most} />
            </li>
          )}
        </ul>
        <MediaStrip evidence={stands?.record.evidence ?? []} of={name} />
      </div>
      {!typed && <KeyPad press={(key) => setValue(pressed(value, key))} />}
      <div className="setting-said">
        <TextField name="why" label={say('settings.why')} value={why} change={setWhy} />
        <TextField
          name="by"
          label={say('settings.by')}
          value={by}
          problem={asked && by.trim() === '' ? say('settings.missing.by') : undefined}
          change={setBy}
        />
        <TextField name="remark" label={say('settings.remark')} value={remark} change={setRemark} />
        <AttachField attached={attached} change={setAttached} />
        <FormEnd
          write={say('settings.write')}
          act="write-setting"
          leave={{ text: say('settings.leave'), press: () => done('') }}
          refused={refused}
        />
      </div>
    </RecordForm>
  );
};
