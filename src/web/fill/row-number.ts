/** The number of a row as it is said: the part behind it tells two devices apart, and nobody reads it. */
export const rowNumber = (row: string | undefined): string =>
  row?.replace(/^(\d+)-[A-Za-z0-9]{1,6}$/, '$1') ?? '';
