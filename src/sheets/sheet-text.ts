/** The words of a sheet in one language. `{name}` in a sentence stands for a part of the note or problem. */
export interface SheetWords {
  readonly title: string;
  readonly about: string;
  /** One word or phrase a field, without its unit. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly outputs: Readonly<Record<string, string>>;
  /** A sentence for every note of the sheet's limits. */
  readonly notes: Readonly<Record<string, string>>;
  /** A sentence for every problem of the sheet's own check. */
  readonly problems?: Readonly<Record<string, string>>;
  /** For each choice: words of its options. */
  readonly options?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** Words by language; English is always there. */
export type SheetText = { readonly en: SheetWords } & { readonly [language: string]: SheetWords };
