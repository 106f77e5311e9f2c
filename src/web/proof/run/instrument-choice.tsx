import type { ReactElement } from 'react';
import { instrumentDate, instrumentNamed } from '../../../proof/index.ts';
import { usePage, useWords } from '../../state/page-context.ts';
import { dayText, today } from '../day-text.ts';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import type { Run } from './use-run.ts';

/** With which instrument it is read: one of the book, with the day on which it is due, or another by its name. */
export const InstrumentChoice = ({ run }: { readonly run: Run }): ReactElement => {
  const page = usePage();
  const words = useWords();
  const { say } = words;
  const { book } = useProof();
  const { check } = run.one;
  const known = book.line?.instruments ?? [];
  const text = run.draft.texts.instrument;
  const own = instrumentNamed(known, text);
  const dateOf = (due: string | undefined): string =>
    say(`proving.run.due.${instrumentDate(due, today(page))}`, {
      due: due === undefined ? '' : dayText(words, due),
    });
  const wanted =
    check.ownInstrument ??
    (check.instrument === undefined ? '' : say(`proof.instrument.${check.instrument}`));
  return (
    <div className="instrument-choice">
      {known.length > 0 && (
        <fieldset className="proof-keys">
          <legend>{say('proving.run.instruments')}</legend>
          {known.map(({ tag, name, due }) => (
            <button
              key={tag}
              type="button"
              data-instrument={tag}
              data-due={instrumentDate(due, today(page))}
              aria-pressed={own?.tag === tag}
              onClick={() => run.type('instrument', own?.tag === tag ? '' : tag)}
            >
              {name ?? tag} <span className="small">{dateOf(due)}</span>
            </button>
          ))}
        </fieldset>
      )}
      <TextField
        name="instrument"
        label={
          wanted === '' ? say('proving.run.instrument') : say('proving.run.instrument.wanted', { wanted })
        }
        value={text}
        change={(value) => run.type('instrument', value)}
      />
      {own !== undefined && instrumentDate(own.due, today(page)) !== 'in date' && (
        <p className="problem small">{say('proving.run.due.warn')}</p>
      )}
    </div>
  );
};
