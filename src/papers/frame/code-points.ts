const format4 = (view: DataView, at: number, into: Set<number>): void => {
  const segments = view.getUint16(at + 6) / 2;
  for (let i = 0; i < segments; i += 1) {
    const end = view.getUint16(at + 14 + 2 * i);
    const start = view.getUint16(at + 16 + 2 * segments + 2 * i);
    // the last segment is a stop mark, not a character
    for (let code = start; code <= end && code < 0xffff; code += 1) into.add(code);
  }
};

const format12 = (view: DataView, at: number, into: Set<number>): void => {
  const groups = view.getUint32(at + 12);
  for (let i = 0; i < groups; i += 1) {
    const end = view.getUint32(at + 20 + 12 * i);
    for (let code = view.getUint32(at + 16 + 12 * i); code <= end; code += 1) into.add(code);
  }
};

/**
 * The code points that a TrueType font has a picture for.
 *
 * Method   the character map, formats 4 and 12
 * Cost     O(size of the map)
 * Source   ISO/IEC 14496-22, Open Font Format, "cmap" (memory); held against what the typesetter refuses in a test
 */
export const codePointsOf = (font: Uint8Array): ReadonlySet<number> => {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const found = new Set<number>();
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const record = 12 + 16 * i;
    // "cmap"
    if (view.getUint32(record) !== 0x636d6170) continue;
    const table = view.getUint32(record + 8);
    for (let j = 0; j < view.getUint16(table + 2); j += 1) {
      const at = table + view.getUint32(table + 4 + 8 * j + 4);
      const format = view.getUint16(at);
      if (format === 4) format4(view, at, found);
      if (format === 12) format12(view, at, found);
    }
  }
  return found;
};
