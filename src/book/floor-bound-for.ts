import type { Book } from './book.ts';

/** The floor: the one that was asked for, else where the line is bound for. */
export const floorBoundFor = (book: Book, asked: string | undefined): string => {
  const floors = book.floors ?? [];
  const bound = floors.find(({ role }) => role === 'bound for') ?? floors.at(-1);
  return asked ?? bound?.tag ?? '';
};
