const sort = 'stroke ';

/** Key of a stroke among the costly results of a book: all that goes into it. */
export const strokeKey = (inputs: object): string => `${sort}${Object.values(inputs).join(' ')}`;

/** The strokes among the costly results of a book. */
export const strokesIn = (found: ReadonlyMap<string, unknown>): Map<string, unknown> =>
  new Map([...found].filter(([key]) => key.startsWith(sort)));
