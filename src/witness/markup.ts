/** Text that is HTML already: made by `html` alone, so that nothing a person wrote gets there unescaped. */
export interface Markup {
  readonly markup: string;
}

/** What may stand in markup: texts and numbers are escaped, parts are put in one after the other, nothing is nothing. */
export type MarkupPart = string | number | Markup | undefined | false | readonly MarkupPart[];

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What no HTML can hold, such as half of a surrogate pair or a control character, stands there as U+FFFD. */
const unwritable = /\p{Surrogate}|(?![\t\n\r])\p{Cc}|\p{Noncharacter_Code_Point}/gu;

export const escaped = (text: string): string =>
  text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (mark) => escapes[mark] ?? mark);

const written = (part: MarkupPart): string => {
  if (part === undefined || part === false) return '';
  if (typeof part === 'string') return escaped(part);
  if (typeof part === 'number') return String(part);
  return 'markup' in part ? part.markup : part.map(written).join('');
};

/** Markup out of a template; attributes are always quoted. */
export const html = (texts: TemplateStringsArray, ...parts: readonly MarkupPart[]): Markup => ({
  markup: texts.reduce((before, text, i) => before + written(parts[i - 1]) + text),
});

/** What a person wrote, in a direction of its own: letters that turn the direction turn nothing beside them. */
export const own = (text: string): Markup => html`<bdi>${text}</bdi>`;
