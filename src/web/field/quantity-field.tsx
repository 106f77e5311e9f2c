import { type KeyboardEvent, memo, type ReactElement, useId, useState } from 'react';
import { valueAt } from '../../book/index.ts';
import { giveUpValue, keepValue, typeValue } from '../commands/type-value.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import type { Typing } from '../state/page-state.ts';

export interface QuantityFieldProps {
  readonly path: string;
  /** What the field is, for someone who does not see where it stands. */
  readonly label: string;
  /** Words to choose from, where the field takes a word. */
  readonly options?: readonly string[] | undefined;
  /** What counts where nothing is written; otherwise it is not known. */
  readonly placeholder?: string | undefined;
}

/**
 * One place of the book, edited where it stands. Text that reads is followed by the whole page at once; text
 * that does not keeps its problem beside it, and is not lost when the person goes to another field.
 */
export const QuantityField = memo(
  ({ path, label, options, placeholder }: QuantityFieldProps): ReactElement => {
    const page = usePage();
    const [left, setLeft] = useState<Typing>();
    const ids = useId();
    const { words } = page;
    // a page has a hundred fields and one is written at a time: the others look at their own place only
    const typing = usePagePart((state) => (state.typing?.path === path ? state.typing : undefined));
    const stored = usePagePart(({ shown }) => words.entryText(shown && valueAt(shown, path)));
    const kept = usePagePart(({ book }) => words.entryText(book && valueAt(book, path)));
    const mine = typing ?? left;
    const text = mine?.text ?? stored;
    const problem = mine?.problems[0];

    const type = (next: string): void => {
      setLeft(undefined);
      typeValue(page, path, next);
    };
    const keep = (): void => {
      if (page.state.get().typing?.path !== path) return;
      if (!keepValue(page)) setLeft(page.state.get().typing);
    };
    const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
      if (event.key === 'Enter') {
        event.preventDefault();
        keep();
      }
      if (event.key === 'Escape' && mine !== undefined) {
        // the same key closes the panel when nothing is being written
        event.stopPropagation();
        setLeft(undefined);
        giveUpValue(page);
      }
    };
    return (
      <span className="field">
        <input
          type="text"
          value={text}
          data-path={path}
          aria-label={words.say('field.edit', { name: label })}
          aria-invalid={problem !== undefined}
          aria-describedby={problem === undefined ? undefined : `${ids}p`}
          className={text === kept ? undefined : 'changed'}
          placeholder={placeholder ?? words.say('edit.unknown')}
          autoComplete="off"
          spellCheck={false}
          {...(options === undefined ? {} : { list: `${ids}o` })}
          onChange={(event) => type(event.target.value)}
          onFocus={() => left !== undefined && type(left.text)}
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
      </span>
    );
  },
);

QuantityField.displayName = 'QuantityField';
