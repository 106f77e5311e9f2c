const FORM = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2}):(\d{2})(?:\.\d{1,9})?(?:Z|[+-](\d{2}):(\d{2}))$/;

/**
 * Whether a text is a moment that exists: RFC 3339 with seconds and an offset, a day that the month has.
 * `Date.parse` alone is no answer: engines differ on what else they read, and some roll 30 February over.
 */
export const isTimestamp = (text: unknown): text is string => {
  const found = typeof text === 'string' ? FORM.exec(text) : null;
  if (!found) return false;
  const [year, month, day, hour, minute, second, offsetHour = 0, offsetMinute = 0] = found
    .slice(1)
    .map((part) => (part === undefined ? undefined : Number(part))) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number?,
    number?,
  ];
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
  return (
    days !== undefined &&
    day >= 1 &&
    day <= days &&
    hour < 24 &&
    minute < 60 &&
    second < 60 &&
    offsetHour < 24 &&
    offsetMinute < 60
  );
};
