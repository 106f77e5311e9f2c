import { type KeyboardEvent, memo, type ReactElement, useId } from 'react';
import { useWords } from '../state/page-context.ts';
import { FieldForm } from './field-form.tsx';
import { useTypedText } from './typed-text.ts';

export interface QuantityFieldProps {
  readonly path: string;
  /** What the field is, for someone who does not see where it stands. */
  readonly label: string;
  /** Words to choose from, where the field takes a word. */
  readonly options?: readonly string[] | undefined;
  /** What counts where nothing is written; otherwise it is not known. */
  readonly placeholder?: string | undefined;
  /** The field takes words, and no unit. */
  readonly wordy?: boolean;
}

/**
 * One place of the book, edited where it stands. Text that reads is followed by the whole page at once; text
 * that does not keeps its problem beside it, and is not lost when the person goes to another field.
 */
export const QuantityField = memo(
  ({ path, label, options, placeholder, wordy }: QuantityFieldProps): ReactElement => {
    const words = useWords();
    const ids = useId();
    const { text, changed, laid, problem, open, type, keep, giveUp, takeUp } = useTypedText(path);
    const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
      if (event.key === 'Enter') {
        event.preventDefault();
        keep();
      }
      if (event.key === 'Escape' && open) {
        // the same key closes the panel when nothing is being written
        event.stopPropagation();
        giveUp();
      }
    };
    return (
      <FieldForm>
        <input
          type="text"
          value={text}
          data-path={path}
          aria-label={wordy === true ? label : words.say('field.edit', { name: label })}
          aria-invalid={problem !== undefined}
          aria-describedby={problem === undefined ? undefined : `${ids}p`}
          className={changed ? 'changed' : undefined}
          placeholder={placeholder ?? words.say('edit.unknown')}
          readOnly={laid}
          {...(laid ? { title: words.say('found.field') } : {})}
          autoComplete="off"
          spellCheck={false}
          {...(options === undefined ? {} : { list: `${ids}o` })}
          onChange={(event) => type(event.target.value)}
          onFocus={takeUp}
          onBlur={keep}
          onKeyDown={onKeyDown}
        />
        {options !== undefined && (
          <datalist id={`${ids}o`}>
            {options.map((option) => (
              <option key={option} value={option} />
            ))}
          </datalist>
        )}
        {problem !== undefined && (
          <span className="problem" id={`${ids}p`} role="alert">
            {words.problem(problem)}
          </span>
        )}
      </FieldForm>
    );
  },
);

QuantityField.displayName = 'QuantityField';
