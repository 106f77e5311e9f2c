import { type ReactElement, useId, useMemo } from 'react';
import { tagsOf } from '../../../book/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { useProof } from '../with-proof.tsx';

/** What is no thing of the line or a floor: nobody finds fault with it. */
const noThings: ReadonlySet<string> = new Set(['person', 'product', 'format', 'check', 'wait', 'afterwards']);

/** One thing of the book by its name; none is a choice too. */
export const ThingChoice = ({
  label,
  value,
  change,
}: {
  readonly label: string;
  readonly value: string;
  readonly change: (tag: string) => void;
}): ReactElement => {
  const { book } = useProof();
  const { say, numbers } = useWords();
  const says = useCheckSays();
  const id = useId();
  const things = useMemo(() => {
    const tags = [...new Set(tagsOf(book).flatMap((one) => (noThings.has(one.thing) ? [] : [one.tag])))];
    return tags
      .map((tag) => ({ tag, name: says.thing(tag) }))
      .sort((a, b) => a.name.localeCompare(b.name, numbers));
  }, [book, says, numbers]);
  return (
    <div className="proof-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} data-field="of" value={value} onChange={({ target }) => change(target.value)}>
        <option value="">{say('open.thing.none')}</option>
        {things.map(({ tag, name }) => (
          <option key={tag} value={tag}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
};
