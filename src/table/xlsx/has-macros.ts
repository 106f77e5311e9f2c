import { zipEntries } from './zip-entries.ts';

/** Whether a spreadsheet holds a program beside its cells. It is never looked at; who gave the file may not know of it. */
export const hasMacros = (bytes: Uint8Array): boolean => {
  const entries = zipEntries(bytes);
  return entries.ok && [...entries.value.keys()].some((name) => /vbaproject\.bin$/i.test(name));
};
