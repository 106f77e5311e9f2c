import { type FormEvent, type ReactElement, useContext, useEffect, useId, useState } from 'react';
import type { BookSummary } from '../../server/api.ts';
import { copyBook, type Made, saveNewBook } from '../commands/save-new-book.ts';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePage } from '../state/page-context.ts';
import { firstVerdict } from './answers-verdict.ts';
import { isBegun, readAnswers } from './form-answers.ts';
import { ShortForm } from './short-form.tsx';

/** A form that makes a book and goes to it; what stands against it is said beside its button. */
const useMaking = (addressOf: (id: string) => string) => {
  const go = useContext(GoContext);
  const [state, setState] = useState<'idle' | 'making' | { readonly refused: string }>('idle');
  const run = (make: () => Promise<Made>) => async (event: FormEvent) => {
    event.preventDefault();
    setState('making');
    const made = await make();
    if ('refused' in made) setState(made);
    else go(addressOf(made.id));
  };
  return { busy: state === 'making', refused: typeof state === 'object' ? state.refused : undefined, run };
};

const Refusal = ({ text }: { readonly text: string | undefined }): ReactElement | null =>
  text === undefined ? null : (
    <p className="short" role="alert">
      {text}
    </p>
  );

const FormWay = (): ReactElement => {
  const { words, notes } = usePage();
  const kept = readAnswers(notes);
  const begun = isBegun(kept);
  const { answered, questions } = firstVerdict(kept?.answers ?? {});
  return (
    <section className="way">
      <h2>{words.say('first.form')}</h2>
      <p>{words.say('first.form.about')}</p>
      {begun && (
        <p className="begun">
          {words.say('first.begun', { answered: answered.length, asked: questions.length })}
        </p>
      )}
      <GoLink to="/new?from=form" className="way-go">
        {words.say(begun ? 'first.goOn' : 'first.form.go')}
      </GoLink>
    </section>
  );
};

const CopyWay = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [books, setBooks] = useState<readonly BookSummary[]>();
  const [chosen, choose] = useState('');
  const [title, setTitle] = useState('');
  const { busy, refused, run } = useMaking((made) => `/books/${encodeURIComponent(made)}`);
  useEffect(() => {
    let gone = false;
    void page.client('listBooks', {}).then((reply) => {
      if (!gone)
        setBooks(reply.ok ? [...reply.value].sort((a, b) => b.savedAt.localeCompare(a.savedAt)) : []);
    });
    return () => {
      gone = true;
    };
  }, [page]);
  const from = chosen === '' ? (books?.[0]?.id ?? '') : chosen;
  return (
    <form className="way" onSubmit={(event) => void run(() => copyBook(page, from, title.trim()))(event)}>
      <h2>{say('first.copy')}</h2>
      <p>{say('first.copy.about')}</p>
      {books?.length === 0 ? (
        <p className="quiet">{say('first.copy.none')}</p>
      ) : (
        <>
          <label htmlFor={`${id}b`}>{say('first.copy.from')}</label>
          <select id={`${id}b`} value={from} onChange={(event) => choose(event.target.value)}>
            {(books ?? []).map((book) => (
              <option key={book.id} value={book.id}>
                {say('first.copy.option', {
                  title: book.title === '' ? say('page.untitled') : book.title,
                  n: book.revision,
                })}
              </option>
            ))}
          </select>
          <label htmlFor={`${id}t`}>{say('first.title')}</label>
          <input id={`${id}t`} type="text" value={title} onChange={(event) => setTitle(event.target.value)} />
          <button type="submit" disabled={busy || from === ''}>
            {say('first.copy.go')}
          </button>
        </>
      )}
      <Refusal text={refused} />
    </form>
  );
};

const BlankWay = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [title, setTitle] = useState('');
  const { busy, refused, run } = useMaking((made) => bookPageAddress(made));
  const make = () =>
    saveNewBook(page, {
      id: page.newId(),
      reason: say('first.reason.blank'),
      book: { title: title.trim() === '' ? say('page.untitled') : title.trim() },
    });
  return (
    <form className="way" onSubmit={(event) => void run(make)(event)}>
      <h2>{say('first.blank')}</h2>
      <p>{say('first.blank.about')}</p>
      <label htmlFor={id}>{say('first.title')}</label>
      <input id={id} type="text" value={title} onChange={(event) => setTitle(event.target.value)} />
      <button type="submit" disabled={busy}>
        {say('first.blank.go')}
      </button>
      <Refusal text={refused} />
    </form>
  );
};

/** Three ways to a new book, the short one first; or the short form itself. */
export const NewPage = ({ form }: { readonly form: boolean }): ReactElement =>
  form ? (
    <ShortForm />
  ) : (
    <div className="ways" id="figures" tabIndex={-1}>
      <FormWay />
      <CopyWay />
      <BlankWay />
    </div>
  );
