import {
  type FormEvent,
  type ReactElement,
  type ReactNode,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react';
import { fieldAt } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { RecordedReading } from '../../record/readings.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useFound } from './found-basis.tsx';
import { bodyOf, type DraftProblems, draftProblems, type FoundDraft, fieldsOfDraft } from './found-draft.ts';
import { keepDraft, keptDraft, rememberReader } from './found-kept.ts';
import { promiseText, typedText } from './found-text.ts';
import { ownPlace } from './own-place.ts';
import { readablePlaces } from './readable-places.ts';

interface FieldProps {
  readonly name: keyof FoundDraft;
  readonly id: string;
  readonly label: string;
  readonly problem: string | undefined;
  readonly hint?: ReactNode;
  readonly children: ReactNode;
}

const Field = ({ name, id, label, problem, hint, children }: FieldProps): ReactElement => (
  <div className={`found-field of-${name}`}>
    <label htmlFor={`${id}${name}`}>{label}</label>
    {children}
    {hint !== undefined && (
      <span className="small quiet" id={`${id}${name}h`}>
        {hint}
      </span>
    )}
    {problem !== undefined && (
      <span className="problem" id={`${id}${name}p`} role="alert">
        {problem}
      </span>
    )}
  </div>
);

export interface FoundFormProps {
  readonly floor: FloorAssessment;
  /** The reading that is corrected; absent for a new one. */
  readonly corrects?: RecordedReading | undefined;
  readonly close: (kept?: string) => void;
}

/** One reading, written down as a record; a correction is a record, too, that names the one it replaces. */
export const FoundForm = ({ floor, corrects, close }: FoundFormProps): ReactElement | null => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = useId();
  const { add } = useFound();
  const bookId = usePagePart((state) => state.id);
  const book = usePagePart((state) => state.book);
  const assessment = usePagePart((state) => state.assessment);
  const kept = { book: bookId, floor: floor.floor, corrects };
  const [draft, setDraft] = useState<FoundDraft>(() => keptDraft(page, kept));
  const [recordId, setRecordId] = useState(page.newId);
  const [asked, setAsked] = useState(false);
  const [sending, setSending] = useState(false);
  const [refused, setRefused] = useState<string>();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector<HTMLElement>('select, input')?.focus(), []);
  const places = useMemo(
    () =>
      book === undefined || assessment === undefined ? [] : readablePlaces(book, assessment, floor.floor),
    [book, assessment, floor.floor],
  );
  if (book === undefined) return null;
  const problems: DraftProblems = asked
    ? draftProblems(words, book, { draft, floor: floor.floor, at: page.now() })
    : {};
  const change = (name: keyof FoundDraft, text: string): void => {
    const next = { ...draft, [name]: text };
    setDraft(next);
    keepDraft(page, kept, next);
    // what was sent and whose answer was lost may be there: what is written now is another record
    setRecordId(page.newId());
    setRefused(undefined);
  };
  const floorPath = `/floors/${(book.floors ?? []).findIndex(({ tag }) => tag === floor.floor)}`;
  // what was read and is asked no more has a name all the same
  const chosen = draft.of === '' ? undefined : `${floorPath}/${draft.of}`;
  const field = chosen === undefined ? undefined : fieldAt(chosen);
  const options = field?.is === 'word' ? field.words.map(String) : undefined;
  const promise = chosen === undefined ? undefined : promiseText(words, book, chosen);
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setAsked(true);
    const at = page.now();
    const wrong = draftProblems(words, book, { draft, floor: floor.floor, at });
    const first = fieldsOfDraft.find((name) => wrong[name] !== undefined);
    if (first !== undefined) {
      form.current?.querySelector<HTMLElement>(`[data-found="${first}"]`)?.focus();
      return;
    }
    setSending(true);
    const body = bodyOf(draft, floor.floor);
    const added = await add({
      id: recordId,
      kind: 'reading',
      version: 2,
      at,
      body,
      ...(corrects === undefined ? {} : { supersedes: corrects.id }),
    });
    setSending(false);
    if ('refused' in added) return setRefused(added.refused);
    rememberReader(page, body.by);
    keepDraft(page, kept, undefined);
    const place = chosen === undefined ? draft.of : ownPlace(words, book, chosen);
    close(say('found.kept', { place, value: body.value }));
  };
  const shared = (name: keyof FoundDraft, hint: boolean) => ({
    id: `${id}${name}`,
    'data-found': name,
    value: draft[name],
    'aria-invalid': problems[name] !== undefined,
    'aria-describedby':
      [...(hint ? [`${id}${name}h`] : []), ...(problems[name] === undefined ? [] : [`${id}${name}p`])].join(
        ' ',
      ) || undefined,
  });
  const input = (name: keyof FoundDraft, label: string, hint?: ReactNode): ReactElement => (
    <Field name={name} id={id} label={label} problem={problems[name]} hint={hint}>
      <input
        {...shared(name, hint !== undefined)}
        type="text"
        inputMode={name === 'users' ? 'numeric' : undefined}
        autoComplete="off"
        spellCheck={false}
        list={name === 'value' && options !== undefined ? `${id}o` : undefined}
        onChange={(event) => change(name, event.target.value)}
      />
    </Field>
  );
  const option = (asks: boolean) =>
    places
      .filter((place) => place.asked === asks)
      .map(({ path, of }) => (
        <option key={of} value={of}>
          {ownPlace(words, book, path)}
        </option>
      ));
  const title =
    corrects === undefined
      ? say('found.form', { floor: floor.name })
      : say('found.form.correct', {
          place: chosen === undefined ? corrects.of : ownPlace(words, book, chosen),
          value: typedText(corrects),
        });
  return (
    <form
      className="found-form"
      ref={form}
      aria-label={title}
      noValidate
      onSubmit={(event) => void send(event)}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close();
      }}
    >
      <h4>{title}</h4>
      <Field name="of" id={id} label={say('found.place')} problem={problems.of}>
        <select {...shared('of', false)} onChange={(event) => change('of', event.target.value)}>
          <option value="">{say('found.place.choose')}</option>
          {chosen !== undefined && !places.some(({ of }) => of === draft.of) && (
            <option value={draft.of}>{ownPlace(words, book, chosen)}</option>
          )}
          {option(false)}
          <optgroup label={say('found.place.asked')}>{option(true)}</optgroup>
        </select>
      </Field>
      {input(
        'value',
        say('found.value'),
        chosen === undefined
          ? say('found.value.hint')
          : promise === undefined
            ? say('found.value.unsaid')
            : say('found.value.promised', { value: promise }),
      )}
      {options !== undefined && (
        <datalist id={`${id}o`}>
          {options.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      {input('instrument', say('found.instrument'))}
      {input('users', say('found.users'))}
      {input('conditions', say('found.conditions'))}
      {input('by', say('found.by'))}
      <div className="found-keys">
        <button type="submit" disabled={sending}>
          {say(sending ? 'found.keeping' : corrects === undefined ? 'found.keep' : 'found.keep.correct')}
        </button>
        <button type="button" className="link" onClick={() => close()}>
          {say('found.giveUp')}
        </button>
      </div>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </form>
  );
};
