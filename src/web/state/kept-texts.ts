/** The fields of what this browser kept; another program's text, or an older one's, has none. */
export const keptFields = (kept: unknown): Readonly<Record<string, unknown>> =>
  typeof kept === 'object' && kept !== null ? (kept as Readonly<Record<string, unknown>>) : {};

/** Those of its fields that are texts. */
export const keptTexts = (kept: unknown): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(keptFields(kept)).filter(
      (entry): entry is [string, string] => typeof entry[1] === 'string',
    ),
  );
