import { type FormEvent, type ReactElement, useId, useRef, useState } from 'react';
import { sampleKinds } from '../../floor/fill/sample-kinds.ts';
import { parseQuantity } from '../../quantity/index.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { keptTexts } from '../state/kept-texts.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import { type SampleField, sampleFields } from './sample-fields.ts';

type Texts = Readonly<Record<string, string>>;

const bare = /^[+\-\u2212]?[\d.,\s]+$/;

const reader = 'reading-by';

/** One of the customer's bottles with its closure, written down as it is measured. */
export const SampleForm = ({
  format,
  count,
}: {
  readonly format: string;
  readonly count: number;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = useId();
  const book = usePagePart((state) => state.id);
  const { write } = useKeptRecords();
  const small = useBottleUnits();
  /** The unit that a bare number has; a bottle full of water is weighed in kilograms or pounds. */
  const unitOf = (field: SampleField): string => {
    const kind = sampleKinds[field];
    if (kind === 'mass') return small.mass === 'oz' ? 'lb' : 'kg';
    return kind === 'temperature' ? small.temperature : small.length;
  };
  const form = useRef<HTMLFormElement>(null);
  const note = `sample/${book}/${format}`;
  const [texts, setTexts] = useState<Texts>(() => {
    const by = page.notes.read(reader);
    return { by: typeof by === 'string' ? by : '', ...keptTexts(page.notes.read(note)) };
  });
  const [asked, setAsked] = useState(false);
  const [told, setTold] = useState('');
  const text = (name: string): string => texts[name] ?? '';
  const read = (field: SampleField) => {
    const typed = text(field).trim();
    if (typed === '') return undefined;
    const whole = bare.test(typed) ? `${typed} ${unitOf(field)}` : typed;
    return {
      whole: whole.replace(/(\d),(\d)/, '$1.$2'),
      result: parseQuantity(whole, sampleKinds[field], { path: field, locale: words.numbers }),
    };
  };
  const problemOf = (field: SampleField): string | undefined => {
    const result = asked ? read(field)?.result : undefined;
    return result?.ok === false ? result.problems.map(words.problem).join(' ') : undefined;
  };
  const change = (name: string, value: string): void => {
    const next = { ...texts, [name]: value };
    setTexts(next);
    page.notes.write(note, next);
  };
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    const made = sampleFields.flatMap((field) => {
      const one = read(field);
      return one === undefined ? [] : [{ field, ...one }];
    });
    const by = text('by').trim();
    if (by === '' || made.length === 0 || made.some(({ result }) => !result.ok)) {
      setTold(by === '' ? say('weigh.missing.by') : made.length === 0 ? say('samples.nothing') : '');
      return;
    }
    const bottle = text('bottle').trim() || String(count + 1);
    const wrong = write([
      {
        id: page.newId(),
        kind: 'sample',
        version: 1,
        at: page.now(),
        body: { format, bottle, by, ...Object.fromEntries(made.map(({ field, whole }) => [field, whole])) },
      },
    ]);
    setTold(wrong ?? say('samples.told', { bottle }));
    if (wrong !== undefined) return;
    page.notes.write(reader, by);
    // the water stays as warm as it was; the rest is measured on each bottle
    const next = { by, temperature: text('temperature') };
    setTexts(next);
    page.notes.write(note, next);
    setAsked(false);
    form.current?.querySelector<HTMLElement>('input')?.focus();
  };
  const input = (name: string, label: string, unit: string, problem: string | undefined): ReactElement => (
    <div className="found-field" key={name}>
      <label htmlFor={`${id}${name}`}>
        {label}
        {unit !== '' && <span className="unit"> {unit}</span>}
      </label>
      <input
        id={`${id}${name}`}
        type="text"
        data-sample={name}
        inputMode={name === 'by' || name === 'bottle' ? undefined : 'decimal'}
        autoComplete="off"
        spellCheck={false}
        value={text(name)}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}${name}p`}
        onChange={(event) => change(name, event.target.value)}
      />
      {problem !== undefined && (
        <span className="problem" id={`${id}${name}p`} role="alert">
          {problem}
        </span>
      )}
    </div>
  );
  return (
    <form className="sample-form" ref={form} noValidate onSubmit={send} aria-label={say('samples.form')}>
      {input('bottle', say('samples.field.bottle', { n: count + 1 }), '', undefined)}
      {sampleFields.map((field) =>
        input(field, say(`samples.field.${field}`), unitOf(field).replace('deg', '°'), problemOf(field)),
      )}
      {input('by', say('samples.field.by'), '', undefined)}
      <div className="found-keys">
        <button type="submit">{say('samples.write')}</button>
        <p role="status">{told}</p>
      </div>
    </form>
  );
};
