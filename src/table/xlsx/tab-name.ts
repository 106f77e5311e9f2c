/** A name that a tab may have: 31 characters, none of those that a formula parts by, no apostrophe at its ends. */
export const tabName = (name: string): string => {
  const plain = name
    .replace(/[[\]:*?/\\\p{C}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^['\s]+/, '');
  const cut = [...plain]
    .slice(0, 31)
    .join('')
    .slice(0, 31)
    .replace(/['\s]+$/, '');
  return cut === '' ? 'Table' : cut;
};
