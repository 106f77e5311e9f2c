import type { Book } from '../../../book/index.ts';
import {
  type CausticRule,
  type CausticRuleKey,
  causticRule,
  causticRuleKeys,
} from '../../../sheets/hygiene/caustic-rules.ts';
import {
  type SanitisingMedium,
  type SanitisingRuleKey,
  sanitisingAlternatives,
  sanitisingRuleKeys,
} from '../../../sheets/hygiene/sanitising-rules.ts';
import type { ZoneAt } from './zones-of.ts';

/** A rule of whose figures the project holds a transcription. */
export type HeldRule =
  | { readonly sort: 'caustic'; readonly key: CausticRuleKey; readonly rule: CausticRule }
  | { readonly sort: 'sanitising'; readonly key: SanitisingRuleKey; readonly medium: SanitisingMedium };

/** What stands in a text where people cite the rule: the number without the shortened name of its state or code. */
const numberOf = (key: string): string => key.split(' ').at(-1)!;

const plain = (text: string): string => text.toLowerCase().replace(/[\s.,;:()§-]+/g, ' ');

const names = (text: string, key: string): boolean =>
  ` ${plain(text)} `.includes(` ${plain(numberOf(key)).trim()} `);

/** Which row of a sanitising rule a zone falls under; none where the book does not say what sanitises. */
const mediumOf = ({ zone }: ZoneAt): SanitisingMedium | undefined => {
  if (zone.medium === 'steam') return 'steam';
  if (zone.medium === 'air') return 'hot air';
  if (zone.medium === 'water' && zone.need !== undefined) return 'hot water';
  if (zone.medium !== 'sanitiser') return undefined;
  if (zone.agent === 'ozone') return 'ozone water';
  if (zone.agent === 'chlorine') return zone.soaks === true ? 'chlorine bath' : 'chlorine spray';
  return undefined;
};

const sanitises = ({ zone }: ZoneAt): boolean => zone.medium === 'sanitiser' || zone.medium === 'steam';

/** Zones that are asked what their rule is: those with a need, and every zone whose work is to clean or to sanitise. */
export const isJudged = (at: ZoneAt): boolean =>
  at.zone.need !== undefined || at.zone.medium === 'detergent' || sanitises(at);

export interface NamedRule {
  /** What the book says, and where. */
  readonly text?: string;
  readonly path: string;
  readonly held?: HeldRule;
}

/** The rule under which a zone is judged: its own, else the one of the agreement. */
export const ruleOf = (book: Book, at: ZoneAt): NamedRule => {
  const own = at.zone.need?.rule;
  const text = own ?? book.agreement?.hygiene?.rule;
  const path =
    own !== undefined || at.zone.need !== undefined ? `${at.path}/need/rule` : '/agreement/hygiene/rule';
  const place = own === undefined && text !== undefined ? '/agreement/hygiene/rule' : path;
  if (text === undefined) return { path: place };
  if (at.zone.medium === 'detergent') {
    const key = causticRuleKeys.find((each) => names(text, each));
    if (key !== undefined) {
      return { text, path: place, held: { sort: 'caustic', key, rule: causticRule(key) } };
    }
  }
  const medium = mediumOf(at);
  const key = sanitisingRuleKeys.find((each) => names(text, each));
  return medium === undefined || key === undefined || sanitisingAlternatives(key, medium).length === 0
    ? { text, path: place }
    : { text, path: place, held: { sort: 'sanitising', key, medium } };
};
