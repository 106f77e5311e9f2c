import type { ReactElement } from 'react';
import { formFor } from '../../book/form.ts';
import { valueAt } from '../../book/index.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { AddMember, focusMember } from './add-member.tsx';
import { LeafList } from './leaf-list.tsx';
import { LinkList } from './link-list.tsx';
import { useListActions } from './member-actions.tsx';
import { isLeaf, type ListForm, needsRoom } from './place-at.ts';
import { TableList } from './table-list.tsx';
import { useWriting } from './write-context.ts';

export interface ListSectionProps {
  readonly path: string;
  readonly form: ListForm;
  readonly label: string;
}

/** The members of a list, what can be done with each, and what can be added. */
export const ListSection = ({ path, form, label }: ListSectionProps): ReactElement => {
  const page = usePage();
  const { open } = useWriting();
  const value = usePagePart(({ book }) => valueAt(book, path));
  const actions = useListActions();
  const members = Array.isArray(value) ? (value as readonly unknown[]) : [];
  if (isLeaf(form.of)) return <LeafList path={path} label={label} form={form} />;
  const roomy = needsRoom(form.of);
  const part = formFor(form.of, undefined);
  const added = (at: string): void => {
    if (roomy) open(at);
    focusMember(at);
  };
  return (
    <>
      {members.length === 0 ? (
        <p className="quiet">{page.words.say('write.empty')}</p>
      ) : roomy ? (
        <LinkList list={path} members={members} actions={actions} />
      ) : (
        part?.is === 'part' && (
          <TableList list={path} label={label} form={part} members={members} actions={actions} />
        )
      )}
      <AddMember list={path} form={form} label={label} added={added} />
    </>
  );
};
