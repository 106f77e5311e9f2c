import { type ReactElement, useState } from 'react';
import { type Fitting, fittingNames, fittings, type RunPiece, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { addMember } from '../commands/change-list.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { newPart } from './new-part.ts';
import type { ListForm } from './place-at.ts';
import { ProblemList } from './problem-list.tsx';
import { pieceNames, usualPiece } from './usual-pieces.ts';
import { focusSoon } from './write-context.ts';

interface Offer {
  readonly id: string;
  readonly text: string;
  readonly value: () => unknown;
}

export interface AddMemberProps {
  readonly list: string;
  readonly form: ListForm;
  readonly label: string;
  /** Index of the member behind which it goes; absent: at the end. */
  readonly behind?: number;
  /** Told where the new member stands. */
  readonly added: (path: string) => void;
}

/** The sensible things to add to a list: each kind of station, the usual pieces of a run, the fittings with their K. */
export const AddMember = ({ list, form, label, behind, added }: AddMemberProps): ReactElement => {
  const page = usePage();
  const { say, number } = page.words;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const book = usePagePart((state) => state.book);
  const add = (value: unknown): void => {
    const done = addMember(page, list, value, behind);
    setProblems(done.problems);
    if (done.problems.length === 0) added(done.path);
  };
  const tag = form.of.is === 'part' ? form.of.fields.get('tag') : undefined;
  const thing = tag?.is === 'text' && tag.tag !== undefined && 'names' in tag.tag ? tag.tag.names : undefined;
  const one =
    thing === undefined ? say('write.add.row') : say('write.add.thing', { thing: say(`thing.${thing}`) });
  const made = (kind?: string): Offer | string => {
    const fresh = newPart(book, list, form.of, kind);
    if ('needs' in fresh) return say('write.add.first', { thing: say(`thing.${fresh.needs}`) });
    const text = kind === undefined ? one : say(`word.${kind}`);
    const named = (value: unknown) =>
      list === '/line/stations' && kind !== undefined ? { ...(value as object), name: text } : value;
    // made anew when it is pressed: the book may have changed since
    const value = () => {
      const now = newPart(page.state.get().book, list, form.of, kind);
      return 'value' in now ? named(now.value) : undefined;
    };
    return { id: kind ?? '', text, value };
  };
  if (list.endsWith('/fittings')) {
    return (
      <div className="adding" data-add={list}>
        <select
          aria-label={say('write.add.what', { what: label })}
          value=""
          onChange={(event) => {
            const kind = event.target.value;
            const other = { kind: say('write.another'), k: 1, count: 1 };
            add(kind === 'other' ? other : { kind, count: 1 });
          }}
        >
          <option value="">{say('write.add')}</option>
          {fittingNames.map((kind: Fitting) => (
            <option key={kind} value={kind}>
              {say('write.fitting', { kind, k: number(fittings[kind].k) })}
            </option>
          ))}
          <option value="other">{say('write.fitting.other')}</option>
        </select>
        <ProblemList problems={problems} />
      </div>
    );
  }
  const isRun = form.of.is === 'choice' && form.of.options.has('pipe');
  const offers: readonly (Offer | string)[] = isRun
    ? pieceNames.map((name) => ({
        id: name,
        text: say(`write.piece.${name}`),
        value: () =>
          usualPiece(
            name,
            ((valueAt(page.state.get().book, list) ?? []) as readonly RunPiece[]).slice(
              0,
              behind === undefined ? undefined : behind + 1,
            ),
            say(`write.piece.${name}`),
          ),
      }))
    : form.of.is === 'choice'
      ? [...form.of.options.keys()].map(made)
      : [made()];
  return (
    <div className="adding" data-add={list}>
      {offers.length > 1 && <span className="quiet">{say('write.add')}</span>}
      {offers.map((offer) =>
        typeof offer === 'string' ? (
          <span key={offer} className="quiet">
            {offer}
          </span>
        ) : (
          <button
            key={offer.id}
            type="button"
            {...(offers.length > 1 ? { 'aria-label': say('write.add.what', { what: offer.text }) } : {})}
            onClick={() => add(offer.value())}
          >
            {offer.text}
          </button>
        ),
      )}
      <ProblemList problems={problems} />
    </div>
  );
};

/** The first field of a member gets the focus once it is there. */
export const focusMember = (path: string): void =>
  focusSoon(
    `[data-path^="${path}/"]:not([data-path$="/tag"])`,
    `[data-path^="${path}/"]`,
    `[data-path="${path}"]`,
  );
