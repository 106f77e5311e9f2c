/** What may stand in a sentence: words and names as they are, numbers written by the locale. */
export type Part = string | number;
export type Parts = Readonly<Record<string, Part>>;

type Piece =
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'part'; readonly name: string }
  | { readonly type: 'plural'; readonly name: string; readonly forms: Readonly<Record<string, Message>> };

/** A message cut into text, parts and plurals. */
export type Message = readonly Piece[];

/** Index just behind the brace that closes the one at `open`. */
const closing = (source: string, open: number): number => {
  let depth = 0;
  for (let i = open; i < source.length; i += 1) {
    if (source[i] === '{') depth += 1;
    if (source[i] === '}') depth -= 1;
    if (depth === 0) return i + 1;
  }
  return source.length;
};

const pluralForms = (source: string): Readonly<Record<string, Message>> => {
  const forms: Record<string, Message> = {};
  let at = 0;
  while (at < source.length) {
    const open = source.indexOf('{', at);
    if (open < 0) break;
    const end = closing(source, open);
    forms[source.slice(at, open).trim()] = parseMessage(source.slice(open + 1, end - 1));
    at = end;
  }
  return forms;
};

/**
 * Cuts the text of a message into pieces.
 *
 * Method   `{name}` is a part; `{name, plural, one {# lane} other {# lanes}}` chooses by the plural rule of
 *          the locale, and `#` is the number itself.
 * Returns  the pieces in order
 * Cost     O(length)
 */
export const parseMessage = (source: string): Message => {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < source.length) {
    const open = source.indexOf('{', at);
    if (open < 0) break;
    if (open > at) pieces.push({ type: 'text', text: source.slice(at, open) });
    const end = closing(source, open);
    const inside = source.slice(open + 1, end - 1);
    const plural = /^\s*(\w+)\s*,\s*plural\s*,/.exec(inside);
    if (plural === null) pieces.push({ type: 'part', name: inside.trim() });
    else
      pieces.push({
        type: 'plural',
        name: plural[1] ?? '',
        forms: pluralForms(inside.slice(plural[0].length)),
      });
    at = end;
  }
  if (at < source.length) pieces.push({ type: 'text', text: source.slice(at) });
  return pieces;
};

export interface MessageLocale {
  readonly number: (value: number) => string;
  readonly plural: (value: number) => string;
}

/** Writes a message with its parts; a part that was not given stays visible as its name in braces. */
export const writeMessage = (message: Message, parts: Parts, locale: MessageLocale, count?: number): string =>
  message
    .map((piece) => {
      if (piece.type === 'text') {
        return count === undefined ? piece.text : piece.text.replaceAll('#', locale.number(count));
      }
      const part = parts[piece.name];
      if (piece.type === 'part') {
        if (part === undefined) return `{${piece.name}}`;
        return typeof part === 'number' ? locale.number(part) : part;
      }
      const n = Number(part);
      const form = piece.forms[`=${n}`] ?? piece.forms[locale.plural(n)] ?? piece.forms.other ?? [];
      return writeMessage(form, parts, locale, n);
    })
    .join('');

/** Names of the parts that a message wants, those inside its plurals too. */
export const partsOf = (message: Message): readonly string[] => [
  ...new Set(
    message.flatMap((piece) =>
      piece.type === 'text'
        ? []
        : piece.type === 'part'
          ? [piece.name]
          : [piece.name, ...Object.values(piece.forms).flatMap(partsOf)],
    ),
  ),
];

/** The message with `change` applied to its text, its parts left as they are. */
export const mapText = (message: Message, change: (text: string) => string): Message =>
  message.map((piece) => {
    if (piece.type === 'text') return { ...piece, text: change(piece.text) };
    if (piece.type === 'part') return piece;
    const forms = Object.entries(piece.forms).map(([name, form]) => [name, mapText(form, change)]);
    return { ...piece, forms: Object.fromEntries(forms) };
  });
