import { type ReactElement, useId } from 'react';
import { defaultUnit, si, unitsOf } from '../../quantity/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { Field } from '../../sheets/frame.ts';
import { useWords } from '../state/page-context.ts';

export interface SheetFieldProps {
  readonly sheet: string;
  readonly name: string;
  readonly field: Field;
  readonly text: string;
  readonly problem: Problem | undefined;
  readonly onType: (text: string) => void;
}

/** One input of a sheet: a text in any unit of its kind, or a choice. */
export const SheetField = ({ sheet, name, field, text, problem, onType }: SheetFieldProps): ReactElement => {
  const words = useWords();
  const id = useId();
  const { say, has } = words;
  const option = (value: string) => {
    const key = `sheet.${sheet}.options.${name}.${value}`;
    return has(key) ? say(key) : value;
  };
  const units = field.type === 'choice' ? [] : unitsOf(field.kind).map(({ label }) => label);
  const assumed =
    field.type === 'list' || field.assumed === undefined
      ? undefined
      : field.type === 'choice'
        ? option(field.assumed)
        : words.quantity(si(field.kind, field.assumed), field.kind, { units: 'metric' }).text;
  return (
    <div>
      <dt>
        <label htmlFor={id}>{say(`sheet.${sheet}.inputs.${name}`)}</label>
      </dt>
      <dd>
        <span className="field">
          {field.type === 'choice' ? (
            <select id={id} value={text} onChange={(event) => onType(event.target.value)}>
              <option value="">{assumed === undefined ? '' : `${assumed}, ${say('sheets.assumed')}`}</option>
              {field.options.map((value) => (
                <option key={value} value={value}>
                  {option(value)}
                </option>
              ))}
            </select>
          ) : (
            <input
              id={id}
              type="text"
              value={text}
              placeholder={
                assumed === undefined
                  ? defaultUnit(field.kind, 'metric')
                  : `${assumed}, ${say('sheets.assumed')}`
              }
              aria-invalid={problem !== undefined}
              aria-describedby={`${id}u`}
              autoComplete="off"
              spellCheck={false}
              onChange={(event) => onType(event.target.value)}
            />
          )}
          {problem !== undefined && (
            <span className="problem" role="alert">
              {words.problem(problem)}
            </span>
          )}
        </span>
      </dd>
      <dd className="under" id={`${id}u`}>
        {field.type === 'list' && `${say('sheets.list')} `}
        {text !== '' && problem !== undefined && units.slice(0, 8).join(', ')}
      </dd>
    </div>
  );
};
