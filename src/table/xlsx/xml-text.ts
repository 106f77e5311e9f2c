/** Characters that XML 1.0 cannot hold or would change, and halves of a pair. */
const unwritable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be written
  /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const numbered = (char: string): string =>
  `_x${char.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

/** Text of a cell as ECMA-376 writes it (ST_Xstring, part 1, 22.9.2.19, memory): `_x000D_` stands for a character. */
export const cellXml = (text: string): string =>
  markupXml(text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_').replace(unwritable, numbered));

/** Text between tags or in an attribute. */
export const markupXml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** The text that `cellXml` wrote. */
export const cellText = (text: string): string =>
  text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
        String.fromCharCode(Number.parseInt(code, 16)),
      )
    : text;
