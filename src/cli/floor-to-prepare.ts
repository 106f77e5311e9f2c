import type { Book } from '../book/index.ts';

/** The floor to prepare: the one that was asked for, else where the line is bound for. */
export const floorToPrepare = (book: Book, asked: string | undefined): string => {
  const floors = book.floors ?? [];
  const bound = floors.find(({ role }) => role === 'bound for') ?? floors.at(-1);
  return asked ?? bound?.tag ?? '';
};
