/** What a language says in place of English texts. */
export interface Translation {
  /** Its subtag, such as `de`. */
  readonly language: string;
  /** The sentence for each English one, parts and plurals as a message has them. */
  readonly texts: ReadonlyMap<string, string>;
}
