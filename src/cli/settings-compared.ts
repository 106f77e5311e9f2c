import type { Book } from '../book/index.ts';
import type { Assessment } from '../floor/assessment.ts';
import { proofOfBook } from '../proof/index.ts';
import {
  compareSettings,
  findingMover,
  type MovedFinding,
  type SettingChange,
  type SettingComparison,
  type SettingRegister,
  type TouchedCheck,
  touchedChecks,
} from '../proof/settings/index.ts';
import type { Envelope } from '../record/envelope.ts';
import type { SettingMoment } from '../record/setting-moments.ts';

export interface ComparedSettings {
  readonly comparison: SettingComparison;
  readonly floor: string;
  readonly changes: readonly {
    readonly change: SettingChange;
    readonly checks: readonly TouchedCheck[];
    readonly moves: readonly MovedFinding[];
  }[];
  /** Findings that all changes together move. */
  readonly moves: readonly MovedFinding[];
}

/** Changes that are tried one by one; beyond, what all of them move together is told alone. */
const mostTried = 40;

export interface ComparedMoments {
  readonly from: SettingMoment;
  readonly to: SettingMoment;
  readonly floor: string;
  readonly records: readonly Envelope[];
}

/** Two moments of a register with what each change makes stale and moves on a floor. */
export const comparedSettings = (
  book: Book,
  assessment: Assessment,
  register: SettingRegister,
  { from, to, floor, records }: ComparedMoments,
): ComparedSettings => {
  const comparison = compareSettings(register, from, to);
  const { changed } = comparison;
  const { format } = assessment;
  const proof = proofOfBook(book, assessment, records);
  const checks = proof.floors.find((one) => one.floor === floor)?.checks ?? [];
  const movesOf = findingMover(book, floor, changed, format);
  return {
    comparison,
    floor,
    changes: changed.map((change) => ({
      change,
      checks: touchedChecks(change, book, checks),
      moves: changed.length > mostTried ? [] : movesOf([change]),
    })),
    moves: movesOf(changed),
  };
};
