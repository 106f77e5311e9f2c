import type { ReactElement } from 'react';
import type { AnswersRead } from '../../floor/questions/index.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { sheetWords } from './answers-sheet.ts';
import { ownPlace } from './own-place.ts';

export interface AnswersReportProps {
  readonly read: AnswersRead;
  readonly take: () => void;
  readonly leave: () => void;
}

/** Row by row what a sheet that came back holds: what would be taken and what was not understood, before anything is. */
export const AnswersReport = ({ read, take, leave }: AnswersReportProps): ReactElement => {
  const { words } = usePage();
  const { say } = words;
  const book = usePagePart((state) => state.book);
  const own = sheetWords(words);
  const nameOf = (path: string): string => (book === undefined ? path : ownPlace(words, book, path));
  const { taken, notUnderstood, empty, missing } = read;
  return (
    <div className="answers-report">
      {notUnderstood.length > 0 && (
        <>
          <h4>{say('answers.not', { n: notUnderstood.length })}</h4>
          <ul>
            {notUnderstood.map(({ row, path, given, problems }) => (
              <li key={row}>
                {say('answers.row', { row: String(row), place: nameOf(path ?? ''), value: given })}
                {problems.map((problem) => (
                  <span className="short" key={problem.code + problem.path}>
                    {own.problem(problem)}
                  </span>
                ))}
              </li>
            ))}
          </ul>
        </>
      )}
      <h4>{say('answers.taken', { n: taken.length })}</h4>
      <ul>
        {taken.map(({ row, path, value, before, notes, by, on, remark }) => (
          <li key={row}>
            {say('answers.row', { row: String(row), place: nameOf(path), value: words.entryText(value) })}
            {before !== undefined && (
              <span className="quiet">{say('answers.before', { value: words.entryText(before) })}</span>
            )}
            {[by, on, remark].some((each) => each !== undefined) && (
              <span className="quiet">
                {[by, on, remark].filter((each) => each !== undefined).join(', ')}
              </span>
            )}
            {notes.map((note) => (
              <span className="quiet" key={note}>
                {own.say(`questionSheet.note.${note}`)}
              </span>
            ))}
          </li>
        ))}
      </ul>
      <p className="small quiet">
        {say('answers.empty', { n: empty.length })}
        {missing.length > 0 && ` ${say('answers.missing', { n: missing.length })}`}
      </p>
      <p className="answers-acts">
        <button type="button" disabled={taken.length === 0} onClick={take}>
          {say('answers.take', { n: taken.length })}
        </button>
        <button type="button" onClick={leave}>
          {say('answers.leave')}
        </button>
      </p>
    </div>
  );
};
