import { lazy, type ReactElement, Suspense, useId, useState } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { AnswersRead } from '../../floor/questions/index.ts';
import type { Result } from '../../quantity/problem.ts';
import { changeBook } from '../commands/change-book.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { usePage } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import type { AskedFloor, SheetKind } from './answers-sheet.ts';

const AnswersReport = lazy(() =>
  untilFetched(() => import('./answers-report.tsx').then((m) => ({ default: m.AnswersReport }))),
);

// spreadsheets come when somebody wants one
const fetchSheets = () => import('./answers-sheet.ts');

const types: Readonly<Record<SheetKind, string>> = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  csv: 'text/csv',
};

/** Hands bytes to the person as a file. */
const saveAs = (name: string, bytes: Uint8Array<ArrayBuffer>, type: string): void => {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};

type Came = { readonly read: Result<AnswersRead>; readonly words: Words; readonly name: string };

/** The questions of a floor as a sheet for the people who answer, and what comes back of it. */
export const AnswersPart = ({ floor }: { readonly floor: FloorAssessment }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [came, setCame] = useState<Came>();
  const [told, setTold] = useState('');
  const now = (): AskedFloor | undefined => {
    const { book, shown, assessment } = page.state.get();
    return book === undefined || shown === undefined || assessment === undefined
      ? undefined
      : { book, assessment, floor: floor.floor, speech: page.words };
  };
  const write = async (kind: SheetKind): Promise<void> => {
    const of = now();
    if (of === undefined) return;
    const { writeSheet } = await fetchSheets();
    const bytes = new Uint8Array(writeSheet(of, kind));
    saveAs(say('answers.file', { floor: floor.name, kind }), bytes, types[kind]);
  };
  const read = async (file: File | undefined): Promise<void> => {
    const of = now();
    if (file === undefined || of === undefined) return;
    setTold('');
    const [{ readSheet, sheetWords }, bytes] = await Promise.all([fetchSheets(), file.arrayBuffer()]);
    const words = sheetWords(of.speech);
    setCame({ read: readSheet(of, new Uint8Array(bytes)), words, name: file.name });
  };
  const take = (): void => {
    if (came?.read.ok !== true) return;
    const { patch, taken } = came.read.value;
    const problems = changeBook(page, say('answers.reason', { name: came.name, n: taken.length }), patch);
    setTold(
      problems.length === 0
        ? say('answers.done', { n: taken.length })
        : problems.map((problem) => page.words.problem(problem)).join(' '),
    );
    if (problems.length === 0) setCame(undefined);
  };
  return (
    <div className="answers">
      <p className="answers-acts small">
        <span>{say('answers.sheet', { floor: floor.name })}</span>
        {(['xlsx', 'csv'] as const).map((kind) => (
          <button
            type="button"
            className="link"
            key={kind}
            aria-label={say('answers.write', { floor: floor.name, kind })}
            onClick={() => void write(kind)}
          >
            {kind}
          </button>
        ))}
        <label className="link" htmlFor={id}>
          {say('answers.read')}
        </label>
        <input
          id={id}
          type="file"
          className="said"
          accept=".xlsx,.csv"
          onChange={({ target }) => {
            void read(target.files?.[0]);
            // the same file may be chosen again after it was mended
            target.value = '';
          }}
        />
      </p>
      {came !== undefined && !came.read.ok && (
        <p className="short small" role="alert">
          {came.read.problems.map((problem) => came.words.problem(problem)).join(' ')}
        </p>
      )}
      {came?.read.ok === true && (
        <Suspense fallback={null}>
          <AnswersReport read={came.read.value} take={take} leave={() => setCame(undefined)} />
        </Suspense>
      )}
      <p className="small" role="status">
        {told}
      </p>
    </div>
  );
};
