/** Whether a file begins as every zip archive does that holds something, which its first four bytes say. */
export const beginsAsZip = (bytes: Uint8Array): boolean =>
  // "PK", then the mark of a part: PKWARE APPNOTE 6.3, 4.3.7
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4;
