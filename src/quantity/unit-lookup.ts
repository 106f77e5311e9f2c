import { type Kind, kinds } from './kinds.ts';
import { plainSpelling } from './spelling.ts';
import type { Unit } from './unit.ts';
import { unitsByKind } from './units-by-kind.ts';

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit>;
  /** By lower case; `null` where two units would answer. */
  readonly folded: ReadonlyMap<string, { readonly unit: Unit; readonly spelled: string } | null>;
}

/** Every spelling of a unit, in its plain form. */
export const spellingsOf = (unit: Unit): readonly string[] => [
  ...new Set([unit.id, unit.label, ...unit.also].map(plainSpelling)),
];

const compiled = (units: readonly Unit[]): Spellings => {
  const exact = new Map<string, Unit>();
  const folded = new Map<string, { unit: Unit; spelled: string } | null>();
  for (const unit of units) {
    for (const spelled of spellingsOf(unit)) {
      if (!exact.has(spelled)) exact.set(spelled, unit);
      const lower = spelled.toLowerCase();
      const held = folded.get(lower);
      folded.set(lower, held === undefined || held?.unit === unit ? { unit, spelled } : null);
    }
    // as it is usually printed: found without being put into plain form first
    for (const usual of [unit.id, unit.label]) if (!exact.has(usual)) exact.set(usual, unit);
  }
  return { exact, folded };
};

const allKinds = Object.keys(kinds) as Kind[];

// compiled once: an edited book is read again at every key
const byKind = new Map<Kind, Spellings>(allKinds.map((kind) => [kind, compiled(unitsByKind[kind])]));

const isM = (text: string): boolean => text.startsWith('m') || text.startsWith('M');

/** The unit that a text names within a kind; letters in another case will do unless they turn milli into mega. */
export const findUnit = (kind: Kind, text: string): Unit | undefined => {
  const { exact, folded } = byKind.get(kind) as Spellings;
  const direct = exact.get(text);
  if (direct !== undefined) return direct;
  const plain = plainSpelling(text);
  const known = exact.get(plain);
  if (known !== undefined) return known;
  const alike = folded.get(plain.toLowerCase());
  if (alike === undefined || alike === null) return undefined;
  return isM(plain) && plain[0] !== alike.spelled[0] ? undefined : alike.unit;
};

/** The kinds that a text would be a unit of. */
export const kindsOfUnit = (text: string): readonly Kind[] =>
  allKinds.filter((kind) => findUnit(kind, text) !== undefined);
