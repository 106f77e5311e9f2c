import { type ReactElement, useId, useMemo, useState } from 'react';
import {
  type JoinKind,
  type ListField,
  type RememberedColumns,
  rememberedFrom,
  withJoins,
} from '../../../joins/index.ts';
import type { Problem, Result } from '../../../quantity/problem.ts';
import type { Encoding } from '../../../table/index.ts';
import { changeBook } from '../../commands/change-book.ts';
import { untilFetched } from '../../shell/until-fetched.ts';
import { keptTexts } from '../../state/kept-texts.ts';
import { usePage } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { ColumnList } from './column-list.tsx';
import { LettersChoice } from './letters-choice.tsx';
import { ListReport } from './list-report.tsx';
import type { ListRead } from './read-list.ts';

// spreadsheets come when somebody wants one
const fetchLists = () => untilFetched(() => import('./read-list.ts'));
type Lists = Awaited<ReturnType<typeof fetchLists>>;

const sorts: readonly JoinKind[] = ['conductor', 'tube', 'hose', 'drain', 'duct', 'bond', 'mechanical'];

interface Came {
  readonly name: string;
  /** Absent: larger than anything that is read. */
  readonly bytes?: Uint8Array;
  readonly lists: Lists;
}

const columnsNote = 'join-columns';

/** A wire or tube list of the builder's own: columns matched and remembered, then its rows as joins of the book. */
export const ImportPart = (): ReactElement => {
  const page = usePage();
  const { say, problem } = page.words;
  const { book } = useJoins();
  const id = useId();
  const [came, setCame] = useState<Came>();
  const [remembered, setRemembered] = useState<RememberedColumns>(
    () => keptTexts(page.notes.read(columnsNote)) as RememberedColumns,
  );
  const [kind, setKind] = useState('');
  const [split, setSplit] = useState('');
  const [said, setSaid] = useState<Encoding>();
  const [told, setTold] = useState('');
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const read = useMemo((): Result<ListRead> | undefined => {
    if (came?.bytes === undefined) return undefined;
    const options = {
      remembered,
      ...(kind === '' ? {} : { kind: kind as JoinKind }),
      ...(split === '' ? {} : { split }),
    };
    return came.lists.readList(came.bytes, book, options, said);
  }, [came, book, remembered, kind, split, said]);
  const choose = async (file: File): Promise<void> => {
    setTold('');
    setRefused([]);
    setSaid(undefined);
    const lists = await fetchLists();
    const fits = file.size <= lists.mostBytes;
    const bytes = fits ? new Uint8Array(await file.arrayBuffer()) : undefined;
    setCame({ name: file.name, lists, ...(bytes === undefined ? {} : { bytes }) });
  };
  const match = (key: string, field: ListField | ''): void => {
    // a thing stands in one column: who says it of another takes it from the first
    const others = Object.entries(remembered).filter(([, one]) => field === '' || one !== field);
    const shown = read?.ok === true ? read.value.columns : [];
    const guessed = shown.filter((one) => field !== '' && one.field === field).map((one) => [one.key, '']);
    setRemembered({ ...Object.fromEntries(others), ...Object.fromEntries(guessed), [key]: field });
  };
  const take = ({ list }: ListRead): void => {
    if (list === undefined || came === undefined) return;
    const columns = { ...remembered, ...rememberedFrom(list.matched) };
    page.notes.write(columnsNote, columns);
    setRemembered(columns);
    const { line } = withJoins(book, list.joins);
    const problems = changeBook(page, say('joining.list.reason', { name: came.name, n: list.joins.length }), [
      { path: '/line/joins', value: line?.joins },
    ]);
    setRefused(problems);
    if (problems.length > 0) return;
    setTold(say('joining.list.taken', { n: list.joins.length }));
    setCame(undefined);
  };
  const choice = (
    name: 'kind' | 'split',
    value: string,
    change: (value: string) => void,
    options: readonly (readonly [string, string])[],
  ): ReactElement => (
    <div className="proof-field">
      <label htmlFor={`${id}${name}`}>{say(`joining.list.${name}`)}</label>
      <select
        id={`${id}${name}`}
        data-field={name}
        value={value}
        onChange={({ target }) => change(target.value)}
      >
        <option value="">{say(`joining.list.${name}.none`)}</option>
        {options.map(([one, text]) => (
          <option key={one} value={one}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
  const shown = read?.ok === true ? read.value : undefined;
  // what was said stays to be said otherwise, also where nothing could be read by it
  const letters = shown?.letters ?? (said === undefined ? undefined : { taken: said, samples: [] });
  return (
    <section className="open-part" aria-labelledby={`${id}t`}>
      <h3 id={`${id}t`}>{say('joining.list')}</h3>
      <p>{say('joining.list.how')}</p>
      <p className="file-door">
        <label className="link" htmlFor={`${id}f`}>
          {say('joining.list.choose')}
        </label>
        <input
          id={`${id}f`}
          type="file"
          className="said"
          data-field="list"
          accept=".xlsx,.xlsm,.csv,.txt"
          onChange={({ target }) => {
            const file = target.files?.[0];
            target.value = '';
            if (file !== undefined) void choose(file);
          }}
        />
      </p>
      {came !== undefined && came.bytes === undefined && (
        <p className="problem" role="alert">
          {say('joining.list.tooLarge', { name: came.name })}
        </p>
      )}
      {read?.ok === false && (
        <p className="problem" role="alert">
          {read.problems.map(problem).join(' ')}
        </p>
      )}
      {letters !== undefined && <LettersChoice {...letters} choose={setSaid} />}
      {came !== undefined && shown !== undefined && (
        <div className="list-read">
          <h4>
            {say('joining.list.columns', {
              name: shown.tab === '' ? came.name : `${came.name}, ${shown.tab}`,
            })}
          </h4>
          {shown.list === undefined && (
            <p className="problem" role="alert">
              {say('joining.list.noHeader')}
            </p>
          )}
          <ColumnList columns={shown.columns} match={match} />
          <div className="joins-filter">
            {choice(
              'kind',
              kind,
              setKind,
              sorts.map((one) => [one, say(`joins.name.${one}`)]),
            )}
            {choice(
              'split',
              split,
              setSplit,
              (book.line?.splits ?? []).map(({ tag, between }) => [tag, `${tag} (${between.join(' | ')})`]),
            )}
          </div>
          {shown.notes.map((one) => (
            <p key={one.code}>{problem(one)}</p>
          ))}
          {shown.list !== undefined && <ListReport list={shown.list} />}
          <p className="proof-acts">
            <button
              type="button"
              data-act="take-list"
              disabled={(shown.list?.joins.length ?? 0) === 0}
              onClick={() => take(shown)}
            >
              {say('joining.list.take', { n: shown.list?.joins.length ?? 0 })}
            </button>
            <button type="button" className="link" onClick={() => setCame(undefined)}>
              {say('joining.list.leave')}
            </button>
          </p>
        </div>
      )}
      {refused.length > 0 && (
        <p className="problem" role="alert">
          {refused.slice(0, 5).map(problem).join(' ')}
        </p>
      )}
      <p role="status" data-told="list">
        {told}
      </p>
    </section>
  );
};
