import { type Message, parseMessage, partsOf } from './message.ts';

/** What keeps a text from standing in for an English message. */
export type Misfit =
  /** A brace that is not opened or not closed. */
  | { readonly is: 'braces' }
  /** Parts of the English that would not be said. */
  | { readonly is: 'missing'; readonly parts: readonly string[] }
  /** Parts that nobody fills in. */
  | { readonly is: 'unknown'; readonly parts: readonly string[] }
  /** Counts by a part that the English does not count by: what is put in may be no number. */
  | { readonly is: 'uncounted'; readonly parts: readonly string[] }
  /** A plural without the form that is always there. */
  | { readonly is: 'other'; readonly parts: readonly string[] }
  /** Forms that the language does not have. */
  | { readonly is: 'forms'; readonly parts: readonly string[] };

const areBracesEven = (text: string): boolean => {
  let depth = 0;
  for (const letter of text) {
    if (letter === '{') depth += 1;
    if (letter === '}') depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0;
};

interface Plural {
  readonly name: string;
  readonly forms: Readonly<Record<string, Message>>;
}

const pluralsOf = (message: Message): readonly Plural[] =>
  message.flatMap((piece) =>
    piece.type === 'plural' ? [piece, ...Object.values(piece.forms).flatMap(pluralsOf)] : [],
  );

const only = (is: Exclude<Misfit['is'], 'braces'>, parts: readonly string[]): readonly Misfit[] =>
  parts.length === 0 ? [] : [{ is, parts: [...new Set(parts)] }];

/**
 * Whether a translation says what the English message says.
 *
 * Method   the same parts, counted by the same; each plural with `other`, and with no form that the language has not
 *          (where the language is known); `=2` is a form of every language
 * Returns  every misfit, none where it fits
 * Cost     O(length)
 */
export const misfits = (english: string, text: string, language?: string): readonly Misfit[] => {
  if (!areBracesEven(text)) return [{ is: 'braces' }];
  const [wanted, given] = [parseMessage(english), parseMessage(text)];
  const [wantedParts, givenParts] = [partsOf(wanted), partsOf(given)];
  const counted = new Set(pluralsOf(wanted).map(({ name }) => name));
  const plurals = pluralsOf(given);
  const known =
    language === undefined
      ? undefined
      : new Set<string>(new Intl.PluralRules(language).resolvedOptions().pluralCategories);
  return [
    ...only(
      'missing',
      wantedParts.filter((part) => !givenParts.includes(part)),
    ),
    ...only(
      'unknown',
      givenParts.filter((part) => !wantedParts.includes(part)),
    ),
    ...only(
      'uncounted',
      plurals.map(({ name }) => name).filter((name) => wantedParts.includes(name) && !counted.has(name)),
    ),
    ...only(
      'other',
      plurals.filter(({ forms }) => forms.other === undefined).map(({ name }) => name),
    ),
    ...only(
      'forms',
      known === undefined
        ? []
        : plurals.flatMap(({ forms }) =>
            Object.keys(forms).filter((form) => !known.has(form) && !/^=\d+$/.test(form)),
          ),
    ),
  ];
};
