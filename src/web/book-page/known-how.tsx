import { type ReactElement, useId, useState } from 'react';
import { valueAt } from '../../book/index.ts';
import { standings } from '../../quantity/index.ts';
import { putValue } from '../commands/put-value.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';

interface Known {
  readonly standing?: string;
  readonly spread?: string;
  readonly by?: string;
}

export interface KnownHowProps {
  readonly path: string;
  readonly label: string;
  /** In a table there is room for a sign only. */
  readonly small?: boolean;
}

/** How a quantity is known: the word for it, and behind it standing, spread, by whom and when. */
export const KnownHow = ({ path, label, small }: KnownHowProps): ReactElement | null => {
  const page = usePage();
  const [open, setOpen] = useState(false);
  const id = useId();
  const { words } = page;
  const { say } = words;
  const value = usePagePart(({ shown }) => shown && valueAt(shown, path));
  if (value === undefined) return null;
  const known: Known = typeof value === 'object' && value !== null ? value : {};
  const standing = known.standing ?? 'stated';
  const said = say(`standing.${standing}`);
  const told = known.by === undefined ? said : say('write.standing.by', { standing: said, by: known.by });
  const fields = [
    ['spread', words.fieldName('/spread')],
    ['by', say('field.by.who')],
    ['on', say('field.on.day')],
  ] as const;
  return (
    <>
      <button
        type="button"
        className={small === true ? 'link known small-known' : 'link known'}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        aria-label={`${say('write.standing', { name: label })}: ${told}`}
        onClick={() => setOpen(!open)}
      >
        {small === true ? '±' : told}
      </button>
      {open && (
        <div className="known-how" id={id}>
          <fieldset>
            <legend className="said">{say('write.standing', { name: label })}</legend>
            {standings.map((each) => (
              <button
                key={each}
                type="button"
                aria-pressed={standing === each}
                onClick={() => putValue(page, `${path}/standing`, each)}
              >
                {say(`standing.${each}`)}
              </button>
            ))}
          </fieldset>
          {fields.map(([key, name]) => (
            <span key={key} className="known-field">
              <span className="quiet">{name}</span>{' '}
              <QuantityField
                path={`${path}/${key}`}
                label={`${label}, ${name}`}
                placeholder={key === 'on' ? say('write.day') : undefined}
                wordy={key !== 'spread'}
              />
            </span>
          ))}
        </div>
      )}
    </>
  );
};
