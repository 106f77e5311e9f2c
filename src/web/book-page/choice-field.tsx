import { type ReactElement, useState } from 'react';
import type { Form } from '../../book/form.ts';
import { tagsOf, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { changeKind, putValue } from '../commands/put-value.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { ProblemList } from './problem-list.tsx';

export interface Option {
  readonly value: string;
  readonly text: string;
}

export interface OptionGroup {
  readonly name?: string;
  readonly options: readonly Option[];
}

interface ChooseProps {
  readonly path: string;
  readonly label: string;
  readonly value: string;
  readonly groups: readonly OptionGroup[];
  /** What is said where nothing is chosen; absent where something must be. */
  readonly none?: string | undefined;
  readonly choose: (value: string) => readonly Problem[];
}

/** A choice from a list, made at once; what would break the book is told below. */
export const Choose = ({ path, label, value, groups, none, choose }: ChooseProps): ReactElement => {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const known = groups.some(({ options }) => options.some((each) => each.value === value));
  const option = ({ value: each, text }: Option) => (
    <option key={each} value={each}>
      {text}
    </option>
  );
  return (
    <>
      <select
        data-path={path}
        aria-label={label}
        value={value}
        className={value === '' ? 'unknown' : undefined}
        onChange={(event) => setProblems(choose(event.target.value))}
      >
        {(none !== undefined || value === '') && <option value="">{none ?? ''}</option>}
        {!known && value !== '' && <option value={value}>{value}</option>}
        {groups.map(({ name, options }) =>
          name === undefined ? (
            options.map(option)
          ) : (
            <optgroup key={name} label={name}>
              {options.map(option)}
            </optgroup>
          ),
        )}
      </select>
      <ProblemList problems={problems} />
    </>
  );
};

interface FieldProps {
  readonly path: string;
  readonly label: string;
  readonly must: boolean;
}

const useChosen = (path: string): unknown => usePagePart(({ book }) => book && valueAt(book, path));

const orNone = (value: string): string | undefined => (value === '' ? undefined : value);

interface FewProps extends FieldProps {
  readonly values: readonly (string | number | boolean)[];
  readonly textOf: (value: string | number | boolean) => string;
}

const FewField = ({ path, label, must, values, textOf }: FewProps): ReactElement => {
  const page = usePage();
  const value = useChosen(path);
  return (
    <Choose
      path={path}
      label={label}
      value={value === undefined ? '' : String(value)}
      groups={[{ options: values.map((each) => ({ value: String(each), text: textOf(each) })) }]}
      none={must ? undefined : page.words.say('write.unknown')}
      choose={(next) =>
        putValue(
          page,
          path,
          values.find((each) => String(each) === next),
        )
      }
    />
  );
};

/** One of a few words, or a number that is one of few. */
export const WordField = ({
  form,
  ...field
}: FieldProps & { readonly form: Extract<Form, { is: 'word' }> }): ReactElement => {
  const { say } = usePage().words;
  return <FewField {...field} values={form.words} textOf={(each) => say(`word.${String(each)}`)} />;
};

/** Yes, no, or not known. */
export const ClaimField = (field: FieldProps): ReactElement => {
  const { say } = usePage().words;
  return (
    <FewField
      {...field}
      values={[true, false]}
      textOf={(each) => say(each === true ? 'write.yes' : 'write.no')}
    />
  );
};

/** The tags that a field may refer to, by what they stand on. */
export const useTagGroups = (form: Extract<Form, { is: 'text' }>): readonly OptionGroup[] => {
  const page = usePage();
  const book = usePagePart((state) => state.book);
  const wanted = form.tag !== undefined && 'refersTo' in form.tag ? form.tag.refersTo : [];
  const fit = tagsOf(book).filter(({ thing }) => wanted === 'any' || wanted.includes(thing));
  const things = [...new Set(fit.map(({ thing }) => thing))];
  const optionsOf = (thing: string): readonly Option[] =>
    fit
      .filter((each) => each.thing === thing)
      .map(({ tag, path }) => {
        const name = valueAt(book, `${path}/name`);
        return { value: tag, text: typeof name === 'string' ? `${tag}  ${name}` : tag };
      });
  return things.length === 1 && wanted !== 'any'
    ? [{ options: optionsOf(things[0] ?? '') }]
    : things.map((thing) => ({ name: page.words.say(`thing.${thing}`), options: optionsOf(thing) }));
};

/** A thing of the book by its tag. */
export const ReferenceField = ({
  path,
  label,
  must,
  form,
}: FieldProps & { readonly form: Extract<Form, { is: 'text' }> }): ReactElement => {
  const page = usePage();
  const value = useChosen(path);
  const groups = useTagGroups(form);
  return (
    <Choose
      path={path}
      label={label}
      value={typeof value === 'string' ? value : ''}
      groups={groups}
      none={must ? undefined : page.words.say('write.unknown')}
      choose={(next) => putValue(page, path, orNone(next))}
    />
  );
};

/** Which kind of station, source or piece stands here; what both kinds have is kept when it changes. */
export const KindField = ({
  path,
  label,
  must,
  form,
}: FieldProps & { readonly form: Extract<Form, { is: 'choice' }> }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const value = useChosen(`${path}/${form.by}`);
  return (
    <Choose
      path={`${path}/${form.by}`}
      label={label}
      value={typeof value === 'string' ? value : ''}
      groups={[
        { options: [...form.options.keys()].map((each) => ({ value: each, text: say(`word.${each}`) })) },
      ]}
      none={must ? undefined : say('write.unknown')}
      choose={(next) => changeKind(page, path, orNone(next))}
    />
  );
};
