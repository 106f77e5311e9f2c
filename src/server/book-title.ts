/** Title of a stored book, or nothing where it has none. */
export const bookTitle = (text: string): string => {
  const book = JSON.parse(text) as { about?: { title?: unknown } };
  return typeof book.about?.title === 'string' ? book.about.title : '';
};
