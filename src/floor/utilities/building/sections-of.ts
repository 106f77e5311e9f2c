import type { Book } from '../../../book/index.ts';

export type Section = NonNullable<NonNullable<Book['line']>['sections']>[number];

export interface SectionAt {
  readonly section: Section;
  readonly path: string;
}

export const sectionsOf = (book: Book): readonly SectionAt[] =>
  (book.line?.sections ?? []).map((section, i) => ({ section, path: `/line/sections/${i}` }));
