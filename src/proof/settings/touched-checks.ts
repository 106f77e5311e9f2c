import type { Book } from '../../book/index.ts';
import type { CheckSort } from '../check.ts';
import { type CheckState, type ProvedCheck, restsOn } from '../proved-check.ts';
import type { SettingChange } from './compare-settings.ts';
import { isWithin, settingPatches } from './setting-patches.ts';
import type { SettingSort } from './setting-row.ts';

/** A check that hangs on a setting. */
export interface TouchedCheck {
  readonly check: string;
  readonly state: CheckState;
  /** It was tried before the setting was changed: what it showed was of another setting. */
  readonly stale: boolean;
}

/** What moves when the pace of a machine does. */
const pace: readonly CheckSort[] = ['cycleTime', 'rate', 'efficiency'];

/** What the control program does by itself. */
const ofProgram: readonly CheckSort[] = [
  'program',
  'states',
  'effect',
  'noEffects',
  'release',
  'reset',
  'powerLoss',
  'airLoss',
  'stopTime',
  'interlock',
  'holdRule',
  'capChute',
];

/** Sorts of checks that hang on a setting which stands nowhere in the book yet, beside those on its own thing. */
const hangOn: Partial<Record<SettingSort, readonly CheckSort[]>> = {
  preset: ['fillLevel'],
  changeOver: ['fillLevel'],
  frequency: [...pace, 'stopTime'],
  parameters: [...pace, 'stopTime'],
  throttleOut: pace,
  throttleBack: pace,
  guide: ['glassBreakage', 'rate', 'efficiency'],
  changePart: ['lineClearance', 'glassBreakage', 'closing', 'rate', 'efficiency'],
  program: ofProgram,
  backup: ['program'],
};

const passed: readonly CheckState[] = ['proved', 'shown', 'concession', 'stands', 'stale'];

/**
 * The checks that a changed setting touches.
 *
 * Method   where the value stands in the book, every check that hangs on that place, and on its own thing those of the
 *          sorts above, whose place is not there yet; where it does not, the checks on the
 *          thing that it belongs to and those of the sorts above. A check whose last try is older than the change is stale;
 *          one that stands from an earlier floor is too
 * Symbols  checks  of the floor on which the second value was read
 */
export const touchedChecks = (
  { row, to }: SettingChange,
  book: Book,
  checks: readonly ProvedCheck[],
): readonly TouchedCheck[] => {
  const places = settingPatches(row, book, to.record.floor, to).map(({ path }) => path);
  const hangs = ({ check }: ProvedCheck): boolean =>
    places.length > 0
      ? restsOn(check).some((place) => places.some((path) => isWithin(path, place))) ||
        (row.on !== undefined && check.on.includes(row.on) && (hangOn[row.sort] ?? []).includes(check.sort))
      : (row.on !== undefined && check.on.includes(row.on)) || (hangOn[row.sort] ?? []).includes(check.sort);
  return checks.filter(hangs).map(({ check, state, inForce }) => ({
    check: check.id,
    state,
    stale:
      passed.includes(state) &&
      (inForce === undefined || Date.parse(inForce.result.at) < Date.parse(to.record.at)),
  }));
};
