/** What is wrong with something that came from outside: data, never prose. The words are made at the edge. */
export interface Problem {
  /** Which of the listed problems this is; the words of it stand in the message catalogue. */
  readonly code: string;
  /** Where: a book path such as `/floors/0/water/source/static`, or the name of a field. */
  readonly path: string;
  /** What was read there, as it came. */
  readonly given?: unknown;
  /** What would be accepted. */
  readonly allowed?: readonly string[] | string;
  /** Further parts of the sentence, by name. */
  readonly parts?: Readonly<Record<string, string | number>>;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const accept = <T>(value: T): Result<T> => ({ ok: true, value });
export const refuse = (...problems: readonly Problem[]): Result<never> => ({ ok: false, problems });
