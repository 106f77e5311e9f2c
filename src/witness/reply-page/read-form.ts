import type { Acceptance, ReplyComment, ReplyStatement } from '../../record/reply.ts';
import type { SeenFile } from '../seen-file.ts';

/** What was written to the checks, in the order of the file. */
export const commentsIn = (page: Document): readonly ReplyComment[] =>
  [...page.querySelectorAll<HTMLTextAreaElement>('textarea[data-check]')].flatMap(({ dataset, value }) => {
    const text = value.trim();
    return text === '' ? [] : [{ check: dataset.check ?? '', floor: dataset.floor ?? '', text }];
  });

/** What the witness says, as it stands in the form; `at` is their own clock. */
export const statementIn = (
  page: Document,
  form: HTMLFormElement,
  { book, revision, file, heads }: SeenFile,
  at: string,
): ReplyStatement => {
  const data = new FormData(form);
  const field = (name: string): string => String(data.get(name) ?? '').trim();
  const answers = form.querySelector<HTMLSelectElement>('[name=answers]')?.selectedOptions[0]?.dataset;
  const remark = field('remark');
  return {
    by: field('by'),
    role: field('role'),
    book,
    revision,
    file,
    heads,
    at,
    accepted: field('accepted') as Acceptance,
    comments: commentsIn(page),
    open: data.getAll('open').map(String),
    ...(answers?.passes === undefined ? {} : { passes: answers.passes, floor: answers.floor ?? '' }),
    ...(remark === '' ? {} : { remark }),
  };
};
