import { type ReactElement, useId, useState } from 'react';
import type { Problem } from '../../quantity/problem.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { useFillPlace } from './fill-place.tsx';
import type { SheetOf, SheetReport } from './import-sheet.ts';

// spreadsheets come when somebody wants one
const fetchSheets = () => untilFetched(() => import('./import-sheet.ts'));

const types = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  csv: 'text/csv',
} as const;

type Came =
  | { readonly report: SheetReport; readonly words: Words }
  | { readonly problems: readonly Problem[]; readonly words: Words };

/** Row by row what was not understood, before anything is written down. */
const Report = ({
  came,
  take,
  leave,
}: {
  readonly came: Came;
  readonly take: (report: SheetReport) => void;
  readonly leave: () => void;
}): ReactElement => {
  const { say } = usePage().words;
  const { words } = came;
  if ('problems' in came) {
    return (
      <p className="problem" role="alert">
        {came.problems.map(words.problem).join(' ')}
      </p>
    );
  }
  const { report } = came;
  const { notUnderstood, empty, unknown, problems } = report.read;
  return (
    <div className="answers-report" data-report={report.bottles}>
      {problems.map((one) => (
        <p className="problem" key={one.code + one.path}>
          {words.problem(one)}
        </p>
      ))}
      {notUnderstood.length > 0 && (
        <>
          <h4>{say('import.not', { n: notUnderstood.length })}</h4>
          <ul>
            {notUnderstood.map((row) => (
              <li key={row.row}>
                {say('import.row', { row: String(row.row), given: row.given })}
                {row.problems.map((one) => (
                  <span className="short" key={one.code + one.path}>
                    {words.problem(one)}
                  </span>
                ))}
              </li>
            ))}
          </ul>
        </>
      )}
      <p className="small quiet">
        {unknown.length > 0 && say('import.unknown', { names: unknown.join(', ') })}{' '}
        {empty.length > 0 && say('import.empty', { n: empty.length })}
      </p>
      <p className="answers-acts">
        <button
          type="button"
          data-act="take-sheet"
          disabled={report.bottles === 0}
          onClick={() => take(report)}
        >
          {say('import.take', { n: report.bottles })}
        </button>
        <button type="button" onClick={leave}>
          {say('import.leave')}
        </button>
      </p>
    </div>
  );
};

export interface ImportPartProps {
  readonly what: SheetOf;
  /** Trials that can be taken away as a sheet. */
  readonly trials?: readonly RecordedTrial[];
}

/** Bottles out of a sheet, as a file or pasted; and the trials into one. */
export const ImportPart = ({ what, trials = [] }: ImportPartProps): ReactElement => {
  const page = usePage();
  const { words: spoken } = page;
  const { say } = spoken;
  const id = useId();
  const { book, floor, format } = useFillPlace();
  const { write } = useKeptRecords();
  const [came, setCame] = useState<Came>();
  const [told, setTold] = useState('');
  const [pasted, setPasted] = useState('');
  const read = async (bytes: Uint8Array): Promise<void> => {
    setTold('');
    const { readSheet, sheetWords } = await fetchSheets();
    const kept = page.notes.read('reading-by');
    const by = typeof kept === 'string' ? kept : page.author;
    const place = { book, floor: floor.tag, format: format?.tag, speech: spoken };
    const result = readSheet(what, bytes, place, by);
    const words = sheetWords(spoken);
    setCame(result.ok ? { report: result.value, words } : { problems: result.problems, words });
  };
  const take = ({ drafts, bottles }: SheetReport): void => {
    const now = page.now();
    const wrong = write(drafts.map(({ at, ...draft }) => ({ ...draft, id: page.newId(), at: at ?? now })));
    setTold(wrong ?? say('import.taken', { n: bottles }));
    if (wrong !== undefined) return;
    setCame(undefined);
    setPasted('');
  };
  const save = async (kind: 'xlsx' | 'csv'): Promise<void> => {
    const { writeTrials } = await fetchSheets();
    const bytes = new Uint8Array(writeTrials(trials, spoken, kind));
    const address = URL.createObjectURL(new Blob([bytes], { type: types[kind] }));
    const link = document.createElement('a');
    link.href = address;
    link.download = say('import.file', { floor: floor.name ?? floor.tag, kind });
    link.click();
    URL.revokeObjectURL(address);
  };
  return (
    <details className="import-part">
      <summary>{say(`import.title.${what}`)}</summary>
      <p className="answers-acts">
        <label className="link" htmlFor={`${id}f`}>
          {say('import.file.choose')}
        </label>
        <input
          id={`${id}f`}
          type="file"
          className="said"
          accept=".xlsx,.csv"
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file !== undefined) void file.arrayBuffer().then((buffer) => read(new Uint8Array(buffer)));
            target.value = '';
          }}
        />
        {trials.length > 0 &&
          (['xlsx', 'csv'] as const).map((kind) => (
            <button type="button" className="link" key={kind} onClick={() => void save(kind)}>
              {say('import.save', { kind })}
            </button>
          ))}
      </p>
      <label htmlFor={`${id}p`}>{say('import.paste')}</label>
      <textarea
        id={`${id}p`}
        rows={4}
        data-paste={what}
        spellCheck={false}
        value={pasted}
        onChange={({ target }) => setPasted(target.value)}
      />
      <p>
        <button
          type="button"
          data-act="read-paste"
          disabled={pasted.trim() === ''}
          onClick={() => void read(new TextEncoder().encode(pasted))}
        >
          {say('import.read')}
        </button>
      </p>
      {came !== undefined && <Report came={came} take={take} leave={() => setCame(undefined)} />}
      <p role="status">{told}</p>
    </details>
  );
};
