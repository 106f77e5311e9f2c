import { Fragment, type ReactElement } from 'react';
import { memberName } from '../commands/change-list.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { usePage } from '../state/page-context.ts';
import { KnownHow } from './known-how.tsx';
import { LeafField } from './leaf-field.tsx';
import { AskedRemoval, type ListActions, MemberActions } from './member-actions.tsx';
import { isLeaf, type PartForm, placeAt } from './place-at.ts';

const Cell = ({ path, label }: { readonly path: string; readonly label: string }): ReactElement | null => {
  const page = usePage();
  const place = placeAt(page.state.get().book, path);
  if (place === undefined) return null;
  if (place.form.is === 'row') {
    return (
      <>
        {place.form.of.map((_, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the places of a row are fixed
          <Cell key={index} path={`${path}/${index}`} label={`${label}, ${index + 1}`} />
        ))}
      </>
    );
  }
  return (
    <>
      <LeafField path={path} place={place} label={label} small />
      {place.form.is === 'quantity' && <KnownHow path={path} label={label} small />}
    </>
  );
};

export interface TableListProps {
  readonly list: string;
  readonly label: string;
  readonly form: PartForm;
  readonly members: readonly unknown[];
  readonly actions: ListActions;
}

/** A list whose members fit into a row each. */
export const TableList = ({ list, label, form, members, actions }: TableListProps): ReactElement => {
  const page = usePage();
  const { words } = page;
  const keys = [...form.fields].filter(([, field]) => isLeaf(field)).map(([key]) => key);
  return (
    <ScrollRegion label={label}>
      <table className="members">
        <thead>
          <tr>
            {keys.map((key) => (
              <th scope="col" key={key}>
                {words.fieldName(`${list}/0/${key}`)}
              </th>
            ))}
            <th>
              <span className="said">{words.say('write.actions', { name: label })}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {members.map((member, index) => {
            const path = `${list}/${index}`;
            const tag = (member as { tag?: string }).tag ?? String(index);
            const name = memberName(page, path);
            return (
              <Fragment key={tag}>
                <tr>
                  {keys.map((key) => (
                    <td key={key} data-label={words.fieldName(`${path}/${key}`)}>
                      <Cell path={`${path}/${key}`} label={`${name}, ${words.fieldName(`${path}/${key}`)}`} />
                    </td>
                  ))}
                  <td>
                    <MemberActions path={path} count={members.length} actions={actions} />
                  </td>
                </tr>
                {actions.asked?.path === path && (
                  <tr>
                    <td colSpan={keys.length + 1}>
                      <AskedRemoval asked={actions.asked} settle={actions.settle} />
                    </td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </ScrollRegion>
  );
};
