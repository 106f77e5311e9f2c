/** Ways in which the letters of a text file may be written, by the names of the WHATWG Encoding Standard. */
export const encodings = [
  'utf-8',
  'windows-1252',
  'macintosh',
  'windows-1250',
  'windows-1251',
  'windows-1253',
  'windows-1254',
  'shift_jis',
  'gb18030',
  'utf-16le',
  'utf-16be',
] as const;

export type Encoding = (typeof encodings)[number];
