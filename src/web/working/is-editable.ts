/** Only a quantity, a number or a word can be written in one field; a part of the book cannot. */
export const isEditable = (value: unknown): boolean =>
  value === undefined ||
  typeof value === 'string' ||
  typeof value === 'number' ||
  (typeof value === 'object' && value !== null && 'value' in value);
