import { type FormEvent, type ReactElement, useId, useRef, useState } from 'react';
import type { PunchPoint } from '../../../proof/punch-points.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { FormEnd } from '../form-end.tsx';
import { AttachField } from '../media/attach-field.tsx';
import { mediaDrafts } from '../media/media-drafts.ts';
import { keepPerson, lastPerson } from '../person.ts';
import { RecordForm } from '../record-form.tsx';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import { nextPoint, punchDraft, saidOf } from './punch-draft.ts';
import { keepsOf, type PunchKeeps, punchKeeps } from './punch-keeps.ts';
import { ThingChoice } from './thing-choice.tsx';

interface Typed {
  readonly text: string;
  readonly keeps: PunchKeeps | '';
  readonly of: string;
  readonly owner: string;
  readonly due: string;
  readonly by: string;
}

const names = ['text', 'keeps', 'of', 'owner', 'due', 'by'] as const;

/** What was typed before a reload; anything else is as if nothing had been. */
const restored = (kept: unknown, blank: Typed): Typed =>
  typeof kept === 'object' &&
  kept !== null &&
  names.every((name) => typeof (kept as Typed)[name] === 'string')
    ? (kept as Typed)
    : blank;

export interface PunchFormProps {
  /** The point that is changed; none is a new one. */
  readonly point?: PunchPoint;
  readonly done: (told: string) => void;
}

/** What is not as it must be, what it keeps from being done, who holds it and until when. */
export const PunchForm = ({ point, done }: PunchFormProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const book = usePagePart((state) => state.id);
  const { proof, floor } = useProof();
  const { write } = useKeptRecords();
  const group = useId();
  const form = useRef<HTMLFormElement>(null);
  const note = `punch/${book}/${point?.point ?? ''}`;
  const [typed, setTyped] = useState<Typed>(() =>
    restored(page.notes.read(note), {
      text: point?.text ?? '',
      keeps: point === undefined ? '' : keepsOf(point),
      of: point?.of[0] ?? '',
      owner: point?.owner ?? '',
      due: point?.due ?? '',
      by: lastPerson(page),
    }),
  );
  const [attached, setAttached] = useState<readonly AttachedMedia[]>([]);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  const change = (part: Partial<Typed>): void => {
    const next = { ...typed, ...part };
    setTyped(next);
    page.notes.write(note, next);
  };
  const leave = (told: string): void => {
    page.notes.write(note, undefined);
    done(told);
  };
  const missing = (name: 'text' | 'by' | 'keeps'): string | undefined =>
    asked && typed[name].trim() === '' ? say(`open.missing.${name}`) : undefined;
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    const { text, keeps, of, owner, due, by } = typed;
    if (text.trim() === '' || by.trim() === '' || keeps === '') {
      form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    // what else the point is on stays: the form shows the first thing alone
    const others = point?.of.slice(1) ?? [];
    const things = [...new Set([...(of === '' ? [] : [of]), ...others])];
    const about = { of: things, by: by.trim(), floor: point?.floor ?? floor.floor };
    const ground =
      point === undefined
        ? { point: nextPoint(proof.punch, page), state: 'open' as const, floor: floor.floor, follows: [] }
        : { ...saidOf(point), evidence: point.evidence };
    const evidence = [...(point?.evidence ?? []), ...attached.map(({ sha256 }) => sha256)];
    const wrong = write([
      ...mediaDrafts(page, attached, about),
      punchDraft(page, { ...ground, text, keeps, of: things, owner, due, by, evidence }),
    ]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    leave(say(point === undefined ? 'open.punch.added' : 'open.punch.changed', { point: ground.point }));
  };
  return (
    <RecordForm
      className="punch-form"
      form={form}
      send={send}
      label={point === undefined ? say('open.punch.add') : say('open.punch.change', { point: point.point })}
      leave={() => leave('')}
    >
      <TextField
        name="text"
        label={say('open.field.text')}
        rows={2}
        value={typed.text}
        problem={missing('text')}
        change={(text) => change({ text })}
      />
      <fieldset className="punch-keeps" aria-invalid={missing('keeps') !== undefined}>
        <legend>{say('open.field.keeps')}</legend>
        {punchKeeps
          .filter(({ keeps }) => keeps !== 'all' || typed.keeps === 'all')
          .map(({ keeps }) => (
            <label key={keeps}>
              <input
                type="radio"
                name={group}
                value={keeps}
                aria-invalid={missing('keeps') !== undefined}
                checked={typed.keeps === keeps}
                onChange={() => change({ keeps })}
              />
              {say(`open.keeps.${keeps}`)}
            </label>
          ))}
        {missing('keeps') !== undefined && (
          <span className="problem" role="alert">
            {missing('keeps')}
          </span>
        )}
      </fieldset>
      <ThingChoice label={say('open.field.of')} value={typed.of} change={(of) => change({ of })} />
      <TextField
        name="owner"
        label={say('open.field.owner')}
        value={typed.owner}
        change={(owner) => change({ owner })}
      />
      <TextField
        name="due"
        kind="date"
        label={say('open.field.due')}
        value={typed.due}
        change={(due) => change({ due })}
      />
      <TextField
        name="by"
        label={say('open.field.by')}
        value={typed.by}
        problem={missing('by')}
        change={(by) => change({ by })}
      />
      <AttachField attached={attached} change={setAttached} />
      <FormEnd
        write={say('open.punch.write')}
        leave={{ text: say('open.leave'), press: () => leave('') }}
        refused={refused}
      />
    </RecordForm>
  );
};
