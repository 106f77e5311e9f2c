import type { Problem } from '../quantity/problem.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { Sheet } from '../sheets/frame.ts';
import { shownBounds } from './shown.ts';

/** Problems of a sheet speak SI; here they get back what was typed, and the bounds in the units of the person. */
export const inUserUnits = (
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
    return {
      ...problem,
      ...(text === undefined ? {} : { given: text }),
      ...(problem.code === 'SHEET_RANGE' ? { allowed: shownBounds(field, wishes, locale) } : {}),
    };
  });
