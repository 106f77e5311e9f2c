import type { Kind } from '../quantity/kinds.ts';
import type { Problem } from '../quantity/problem.ts';
import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { Field, Sheet } from './frame.ts';

// A share of 0.999999 at most would read 1 in the usual digits, and 1 is refused.
const boundDigits = (bound: number, kind: Kind): number | undefined =>
  kind === 'count' || Number(bound.toPrecision(4)) === bound ? undefined : 6;

/** What a field accepts, in the unit that it is printed in; nothing where every number is accepted. */
export const shownBounds = (field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice') return field.options.join(', ');
  const say = (sign: string, bound: number | undefined) =>
    bound === undefined
      ? []
      : [`${sign} ${shown(bound, field.kind, wishes, locale, boundDigits(bound, field.kind))}`];
  const { above, least } = field;
  return [
    // of two lower ends the higher one counts
    ...say('>', above !== undefined && least !== undefined && least > above ? undefined : above),
    ...say('≥', above !== undefined && least !== undefined && least <= above ? undefined : least),
    ...say('<', field.type === 'number' ? field.below : undefined),
    ...say('≤', field.most),
  ].join(', ');
};

/** One end, or both, as a check states them: `>= 273.65, <= 298.15`, in SI. */
const bareEnds = /^(?:(?:[<>]=?) *-?\d[\d.]*(?:e[+-]?\d+)?(?:, )?)+$/i;
const oneEnd = /([<>]=?) *(-?\d[\d.]*(?:e[+-]?\d+)?)/gi;
const signs: Readonly<Record<string, string>> = { '<=': '≤', '>=': '≥' };

/** What a check allows, its bare numbers as the reader says them; what was put into words stays. */
export const endsAsSaid = (allowed: string, say: (si: number) => string): string =>
  bareEnds.test(allowed)
    ? allowed.replace(
        oneEnd,
        (_, sign: string, number: string) => `${signs[sign] ?? sign} ${say(Number(number))}`,
      )
    : allowed;

/** Problems of a sheet speak SI; here they get back what was typed, and the bounds in the units of the person. */
export const problemsAsTyped = (
  problems: readonly Problem[],
  sheet: Sheet,
  texts: Readonly<Record<string, string>>,
  wishes: UnitWishes,
  locale: string,
): readonly Problem[] =>
  problems.map((problem) => {
    const field = sheet.inputs[problem.path];
    const text = texts[problem.path];
    if (field === undefined) return problem;
    const { code, allowed } = problem;
    const range = code === 'SHEET_RANGE';
    // of a list it may be told how many there are, and that is not what was typed
    const counted = field.type === 'list' && !range && typeof problem.given === 'number';
    return {
      ...problem,
      ...(text === undefined || counted ? {} : { given: text }),
      ...(range
        ? { allowed: shownBounds(field, wishes, locale) }
        : typeof allowed === 'string' && field.type !== 'choice'
          ? {
              allowed: endsAsSaid(allowed, (end) => shown(end, field.kind, wishes, locale)),
            }
          : {}),
    };
  });
