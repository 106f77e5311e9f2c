/** A text as it is compared with what somebody types: small letters without accents. */
export const smallLetters = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').replace(/ß/g, 'ss').toLowerCase();
