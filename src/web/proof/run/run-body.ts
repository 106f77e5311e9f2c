import { type PlannedCheck, type StablePlace, typedReading } from '../../../proof/index.ts';
import type { Kind } from '../../../quantity/index.ts';
import { writtenQuantity } from '../../field/written-quantity.ts';
import type { Words } from '../../words/words.ts';
import type { RunDraft, RunText } from './run-draft.ts';

/** The body of a record of a check as it was tried. */
export interface TriedBody {
  readonly check: string;
  readonly floor: string;
  readonly by: string;
  readonly basis: readonly (StablePlace & { readonly sha256: string })[];
  readonly seen?: boolean;
  readonly readings?: readonly string[];
  readonly conditions?: readonly { readonly condition: string; readonly read: string }[];
  readonly witness?: string;
  readonly instrument?: string;
  readonly evidence?: readonly string[];
  readonly concession?: { readonly why: string; readonly until: string; readonly by: string };
  readonly late?: { readonly what: string; readonly who: string; readonly due: string };
  readonly remark?: string;
}

/** What is wrong, in a sentence at its field: `reading`, a text, or `condition` and its id. */
export type RunProblems = Readonly<Record<string, string>>;

export interface RunGround {
  readonly check: PlannedCheck;
  readonly floor: string;
  readonly basis: TriedBody['basis'];
  /** The unit that stands beside the fields of a kind. */
  readonly unitOf: (kind: Kind) => string;
}

export interface MadeBody {
  readonly body: TriedBody;
  /** What does not read; it is not in the body. */
  readonly wrong: RunProblems;
  /** What must be there before it can be written down. */
  readonly missing: RunProblems;
}

/** The kind of what is read of a check; undefined where it is seen. */
export const kindOfCheck = ({ limits }: PlannedCheck): Kind | undefined => limits[0]?.figure.kind;

const filled = (texts: RunDraft['texts'], names: readonly RunText[]): readonly string[] =>
  names.map((name) => texts[name].trim()).filter((text) => text !== '');

/**
 * A record out of what stands in the fields.
 *
 * Returns  the body as far as it reads, so that its verdict can be shown while one types, with what is wrong and what is
 *          still missing
 */
export const runBody = (words: Words, draft: RunDraft, ground: RunGround): MadeBody => {
  const { say, numbers: locale } = words;
  const { check, floor, basis, unitOf } = ground;
  const { texts } = draft;
  const wrong: Record<string, string> = {};
  const missing: Record<string, string> = {};
  const written = (text: string, kind: Kind | undefined, path: string): readonly string[] => {
    if (text.trim() === '') return [];
    // what it must be is not known: the reading stays as it was typed
    if (kind === undefined) return [text.trim()];
    const read = writtenQuantity({ text, kind, unit: unitOf(kind), locale, path });
    // what would not count is told before it is written down
    const counted = read.ok ? typedReading(read.value.text, kind, path) : read;
    if (read.ok && counted.ok) return [read.value.text];
    wrong[path] = (counted.ok ? [] : counted.problems).map(words.problem).join(' ');
    return [];
  };
  const kind = kindOfCheck(check);
  const readings = kind === undefined ? [] : [...draft.readings, ...written(draft.reading, kind, 'reading')];
  const seen = kind === undefined ? draft.seen : undefined;
  const conditions = [
    ...check.under.flatMap(({ id, read, limits }) => {
      const text = draft.conditions[id] ?? '';
      if (read !== 'quantity') return text === '' ? [] : [{ condition: id as string, read: text }];
      return written(text, limits[0]?.figure.kind, `condition ${id}`).map((one) => ({
        condition: id as string,
        read: one,
      }));
    }),
    ...check.ownConditions.flatMap((condition) => {
      const read = draft.conditions[condition] ?? '';
      return read === '' ? [] : [{ condition, read }];
    }),
  ];
  const whole = (names: readonly RunText[]): boolean => {
    const there = filled(texts, names).length;
    if (there === 0) return false;
    for (const name of names)
      if (texts[name].trim() === '') missing[name] = say(`proving.run.missing.${name}`);
    return there === names.length;
  };
  const concession = whole(['why', 'until', 'accepter']);
  const late = whole(['what', 'who', 'due']);
  if (texts.by.trim() === '') missing.by = say('proving.run.missing.by');
  if (seen === undefined && readings.length === 0 && !late) {
    const name = kind === undefined ? 'seen' : 'reading';
    missing[name] = say(`proving.run.missing.${name}`);
  }
  const evidence = [...new Set([...draft.evidence, ...draft.attached.map(({ sha256 }) => sha256)])];
  const said = Object.fromEntries(
    (['witness', 'instrument', 'remark'] as const).flatMap((name) =>
      texts[name].trim() === '' ? [] : [[name, texts[name].trim()]],
    ),
  );
  const trimmed = (name: RunText): string => texts[name].trim();
  return {
    body: {
      check: check.id,
      floor,
      by: trimmed('by'),
      basis,
      ...(seen === undefined ? {} : { seen }),
      ...(readings.length === 0 ? {} : { readings }),
      ...(conditions.length === 0 ? {} : { conditions }),
      ...said,
      ...(evidence.length === 0 ? {} : { evidence }),
      ...(concession
        ? { concession: { why: trimmed('why'), until: trimmed('until'), by: trimmed('accepter') } }
        : {}),
      ...(late ? { late: { what: trimmed('what'), who: trimmed('who'), due: trimmed('due') } } : {}),
    },
    wrong,
    missing,
  };
};
