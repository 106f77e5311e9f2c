import type { ReactElement } from 'react';
import { asPrinted } from '../../quantity/as-printed.ts';
import type { Field, Value } from '../../sheets/frame.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { useWords } from '../state/page-context.ts';

/** A value of a sheet as it is read: a quantity, a list of them, or a chosen word. */
export const SheetValue = ({
  sheet,
  name,
  field,
  value,
}: {
  readonly sheet: string;
  readonly name: string;
  readonly field: Field;
  readonly value: Value;
}): ReactElement => {
  const words = useWords();
  if (field.type === 'choice' || typeof value === 'string') {
    const key = `sheet.${sheet}.options.${name}.${String(value)}`;
    return <span>{words.has(key) ? words.say(key) : asPrinted(String(value))}</span>;
  }
  if (typeof value === 'number')
    return <ShownQuantity value={value} kind={field.kind} digits={field.digits} />;
  return (
    <span>
      {value.map((one, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the place in the list is what the number is
        <span key={i}>
          {i > 0 && '; '}
          <ShownQuantity value={one} kind={field.kind} digits={field.digits ?? 3} />
        </span>
      ))}
    </span>
  );
};
