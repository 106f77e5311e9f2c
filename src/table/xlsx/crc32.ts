const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest >>> 0;
});

/** The check number of an archive's part: CRC-32 of ISO 3309, reflected 04C11DB7. */
export const crc32 = (bytes: Uint8Array): number => {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (rest >>> 8) ^ (table[(rest ^ byte) & 0xff] as number);
  return (rest ^ 0xffffffff) >>> 0;
};
