import { type ReactElement, useState } from 'react';
import type { Form } from '../../book/form.ts';
import { valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { addMember } from '../commands/change-list.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { Choose, useTagGroups } from './choice-field.tsx';
import { LeafField } from './leaf-field.tsx';
import { AskedRemoval, MemberActions, useListActions } from './member-actions.tsx';
import type { ListForm } from './place-at.ts';
import { ProblemList } from './problem-list.tsx';

type TextForm = Extract<Form, { is: 'text' }>;

const AddReference = ({
  path,
  label,
  form,
}: {
  readonly path: string;
  readonly label: string;
  readonly form: TextForm;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const there = usePagePart(({ book }) => valueAt(book, path));
  const used = Array.isArray(there) ? (there as readonly unknown[]) : [];
  const groups = useTagGroups(form).map(({ name, options }) => ({
    ...(name === undefined ? {} : { name }),
    options: options.filter(({ value }) => !used.includes(value)),
  }));
  return (
    <span data-add={path}>
      <Choose
        path={`${path}/-`}
        label={say('write.add.what', { what: label })}
        value=""
        groups={groups}
        none={say('write.add')}
        choose={(tag) => {
          const done = tag === '' ? [] : addMember(page, path, tag).problems;
          setProblems(done);
          return [];
        }}
      />
      <ProblemList problems={problems} />
    </span>
  );
};

/** A list of words or references: each in a field of its own, and one more at the end. */
export const LeafList = ({
  path,
  label,
  form,
}: {
  readonly path: string;
  readonly label: string;
  readonly form: ListForm;
}): ReactElement => {
  const value = usePagePart(({ book }) => valueAt(book, path));
  const actions = useListActions();
  const members = Array.isArray(value) ? (value as readonly unknown[]) : [];
  const isReference = form.of.is === 'text' && form.of.tag !== undefined;
  const named = (index: number) => `${label}, ${index + 1}`;
  return (
    <div className="leaf-list">
      {members.map((_, index) => {
        const at = `${path}/${index}`;
        return (
          <span className="leaf" key={at}>
            <LeafField path={at} place={{ form: form.of, help: '', must: true }} label={named(index)} />
            <MemberActions
              path={at}
              count={members.length}
              actions={actions}
              among={['up', 'down', 'remove']}
            />
          </span>
        );
      })}
      {actions.asked !== undefined && <AskedRemoval asked={actions.asked} settle={actions.settle} />}
      {isReference ? (
        <AddReference path={path} label={label} form={form.of as TextForm} />
      ) : (
        <AddText path={path} label={label} />
      )}
    </div>
  );
};

const AddText = ({ path, label }: { readonly path: string; readonly label: string }): ReactElement => {
  const { say } = usePage().words;
  return (
    <QuantityField
      path={`${path}/-`}
      label={say('write.add.what', { what: label })}
      placeholder={say('write.another')}
      wordy
    />
  );
};
