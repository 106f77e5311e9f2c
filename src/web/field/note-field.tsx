import { type KeyboardEvent, memo, type ReactElement, useId } from 'react';
import { useWords } from '../state/page-context.ts';
import { FieldForm } from './field-form.tsx';
import { useTypedText } from './typed-text.ts';

/** A longer text of the book, in lines of its own. */
export const NoteField = memo(
  ({ path, label }: { readonly path: string; readonly label: string }): ReactElement => {
    const words = useWords();
    const ids = useId();
    const { text, changed, problem, open, type, keep, giveUp, takeUp } = useTypedText(path);
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || !open) return;
      event.stopPropagation();
      giveUp();
    };
    return (
      <FieldForm>
        <textarea
          value={text}
          rows={1}
          data-path={path}
          aria-label={label}
          aria-invalid={problem !== undefined}
          aria-describedby={problem === undefined ? undefined : `${ids}p`}
          className={changed ? 'changed' : undefined}
          placeholder={words.say('write.unknown')}
          onChange={(event) => type(event.target.value)}
          onFocus={takeUp}
          onBlur={keep}
          onKeyDown={onKeyDown}
        />
        {problem !== undefined && (
          <span className="problem" id={`${ids}p`} role="alert">
            {words.problem(problem)}
          </span>
        )}
      </FieldForm>
    );
  },
);

NoteField.displayName = 'NoteField';
