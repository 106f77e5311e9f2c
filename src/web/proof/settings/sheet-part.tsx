import { type ReactElement, useId, useState } from 'react';
import type { SettingsRead } from '../../../proof/settings/index.ts';
import type { Problem } from '../../../quantity/problem.ts';
import { untilFetched } from '../../shell/until-fetched.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { lastPerson } from '../person.ts';
import { useProof } from '../with-proof.tsx';
import { settingDraft } from './setting-draft.ts';
import { useRegister } from './with-register.tsx';

// spreadsheets come when somebody wants one
const fetchSheets = () => untilFetched(() => import('./settings-sheet.ts'));

const types = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  csv: 'text/csv',
} as const;

type Came = { readonly read: SettingsRead } | { readonly problems: readonly Problem[] };

/** Row by row what a sheet brings and what was not understood, before anything is written down. */
const Report = ({ read, take }: { readonly read: SettingsRead; readonly take: () => void }): ReactElement => {
  const { words } = usePage();
  const { say } = words;
  const { register, says } = useRegister();
  const rows = new Map(register.rows.map(({ row }) => [row.id, row]));
  const nameOf = (id: string): string => {
    const row = rows.get(id);
    return row === undefined ? id : says.name(row);
  };
  return (
    <div data-report={read.taken.length}>
      <p>
        {say('settings.sheet.found', { n: read.taken.length, unchanged: read.unchanged, empty: read.empty })}{' '}
        {read.missing.length > 0 && say('settings.sheet.missing', { n: read.missing.length })}
      </p>
      <ul>
        {read.taken.map(({ row, setting, moment, value }) => (
          <li key={`${setting} ${moment}`}>
            {say('settings.sheet.row', {
              row: String(row),
              name: nameOf(setting),
              moment: say(`setting.moment.${moment}`),
              value,
            })}
          </li>
        ))}
      </ul>
      {read.notUnderstood.length > 0 && (
        <>
          <p className="short">{say('settings.sheet.not', { n: read.notUnderstood.length })}</p>
          <ul>
            {read.notUnderstood.map(({ row, given, problems }) => (
              <li key={row}>
                {say('settings.sheet.given', { row: String(row), given })}{' '}
                <span className="short">{problems.map(words.problem).join(' ')}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {read.taken.length > 0 && (
        <button type="button" data-act="take-sheet" onClick={take}>
          {say('settings.sheet.write', { n: read.taken.length })}
        </button>
      )}
    </div>
  );
};

/** The register as a spreadsheet, and one that came back. */
export const SheetPart = (): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const { book } = useProof();
  const { register, says } = useRegister();
  const { write } = useKeptRecords();
  const id = useId();
  const [came, setCame] = useState<Came>();
  const [told, setTold] = useState('');
  const save = async (kind: 'xlsx' | 'csv'): Promise<void> => {
    const { writeSettings } = await fetchSheets();
    const bytes = new Uint8Array(writeSettings(register, says, words, kind));
    const address = URL.createObjectURL(new Blob([bytes], { type: types[kind] }));
    const link = document.createElement('a');
    link.href = address;
    link.download = say('settings.sheet.file', { kind });
    link.click();
    URL.revokeObjectURL(address);
  };
  const read = async (file: File): Promise<void> => {
    setTold('');
    const { readSettings } = await fetchSheets();
    const bytes = new Uint8Array(await file.arrayBuffer());
    const result = readSettings(bytes, { book, register, says, words, by: lastPerson(page) || page.author });
    setCame(result.ok ? { read: result.value } : { problems: result.problems });
  };
  const take = ({ taken }: SettingsRead): void => {
    const stands = new Map(register.rows.map(({ row, at }) => [row.id, at]));
    const wrong = write(
      taken.map(({ row: _row, before: _before, ...one }) =>
        settingDraft(page, { ...one, instead: stands.get(one.setting)?.[one.moment]?.record.id }),
      ),
    );
    setTold(wrong ?? say('settings.sheet.written', { n: taken.length }));
    if (wrong === undefined) setCame(undefined);
  };
  return (
    <section className="open-part" data-part="sheet">
      <h3>{say('settings.sheet')}</h3>
      <p className="proof-acts">
        {(['xlsx', 'csv'] as const).map((kind) => (
          <button
            type="button"
            className="link"
            key={kind}
            data-act={`save-${kind}`}
            onClick={() => void save(kind)}
          >
            {say('settings.sheet.save', { kind })}
          </button>
        ))}
        <span className="file-door">
          <label className="link" htmlFor={id}>
            {say('settings.sheet.take')}
          </label>
          <input
            id={id}
            type="file"
            className="said"
            data-field="settings-sheet"
            accept=".xlsx,.csv"
            onChange={({ target }) => {
              const file = target.files?.[0];
              target.value = '';
              if (file !== undefined) void read(file);
            }}
          />
        </span>
      </p>
      {came !== undefined && 'problems' in came && (
        <p className="problem" role="alert">
          {came.problems.map(words.problem).join(' ')}
        </p>
      )}
      {came !== undefined && 'read' in came && <Report read={came.read} take={() => take(came.read)} />}
      <p role="status">{told}</p>
    </section>
  );
};
