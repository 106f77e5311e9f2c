/**
 * A name that nothing else has. The browser's own `randomUUID` is absent on a page that came unencrypted, as a device
 * in the hall may have it; the random bytes under it are not.
 *
 * Source   RFC 9562, 5.4 (UUID version 4)
 */
export const randomId = (chance: Pick<Crypto, 'getRandomValues'>): string => {
  const bytes = chance.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
};
