const milliseconds = 86_400_000;

/** A day of the book, `2027-03-08`, as days since 1 January 1970; undefined for what is no day. */
export const dayNumber = (text: string | undefined): number | undefined => {
  if (text === undefined || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const at = Date.parse(`${text}T00:00:00Z`);
  return Number.isNaN(at) || dayText(at / milliseconds) !== text ? undefined : at / milliseconds;
};

/** The day with a number. */
export const dayText = (number: number): string =>
  new Date(Math.floor(number) * milliseconds).toISOString().slice(0, 10);
