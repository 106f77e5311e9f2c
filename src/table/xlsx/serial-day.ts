const dayLength = 86_400_000;

/** 1900-03-01 has the number 61; the day 60, 1900-02-29, never was, and what lies before it is one off. */
const epoch = Date.UTC(1899, 11, 30);

const two = (number: number): string => String(number).padStart(2, '0');

const timeOf = (milliseconds: number, wholeHours: number): string => {
  const seconds = Math.floor(milliseconds / 1000) % 60;
  const rest = milliseconds % 1000;
  const minutes = Math.floor(milliseconds / 60_000) % 60;
  return `${two(wholeHours)}:${two(minutes)}:${two(seconds)}${rest === 0 ? '' : `.${String(rest).padStart(3, '0')}`}`;
};

/** Days from 1900-01-01 to 9999-12-31. */
const isDay = (serial: number): boolean =>
  serial >= 1 && serial < 2_958_466 && !(serial >= 60 && serial < 61);

/**
 * A day number of a spreadsheet as text of ISO 8601: a day, a day with its time, or a time alone below one.
 *
 * Symbols  serial  days since 1899-12-30, or since 1904-01-01 where the workbook says so
 * Returns  undefined where no calendar has the day
 * Source   ECMA-376 part 1, 18.17.4.1, memory
 */
export const dayText = (serial: number, from1904 = false): string | undefined => {
  if (serial >= 0 && serial < 1) {
    const time = Math.round(serial * dayLength);
    return timeOf(time, Math.floor(time / 3_600_000));
  }
  const whole = from1904 ? serial + 1462 : serial;
  if (!isDay(whole)) return undefined;
  const moment = Math.round(epoch + (whole < 60 ? whole + 1 : whole) * dayLength);
  const date = new Date(moment);
  const day = `${String(date.getUTCFullYear()).padStart(4, '0')}-${two(date.getUTCMonth() + 1)}-${two(date.getUTCDate())}`;
  const time = ((moment % dayLength) + dayLength) % dayLength;
  return time === 0 ? day : `${day}T${timeOf(time, date.getUTCHours())}`;
};

/** A duration, whose hours run on: `36:15:00`. */
export const durationText = (serial: number): string | undefined => {
  if (serial < 0 || serial >= 2_958_466) return undefined;
  const time = Math.round(serial * dayLength);
  return timeOf(time, Math.floor(time / 3_600_000));
};

/** The number of a day written as YYYY-MM-DD; undefined where no calendar has it or it lies before March 1900. */
export const serialOf = (day: string): number | undefined => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) return undefined;
  const moment = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(moment) || new Date(moment).toISOString().slice(0, 10) !== day) return undefined;
  const serial = Math.round((moment - epoch) / dayLength);
  return serial > 60 ? serial : undefined;
};
