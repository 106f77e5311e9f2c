/** A form of file that can be attached, told by its first bytes. */
export interface MediaForm {
  /** Types that a file of this form may have, the likeliest first: one container holds film or sound. */
  readonly types: readonly string[];
  readonly fits: (head: Uint8Array) => boolean;
}

/** Bytes from the start that decide the form. */
export const headSize = 64;

const codes = (text: string): readonly number[] => [...text].map((letter) => letter.charCodeAt(0));

const holds = (head: Uint8Array, at: number, bytes: readonly number[]): boolean =>
  bytes.every((byte, i) => head[at + i] === byte);

const latin = (head: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...head.subarray(from, to));

/** Brand of an ISO media file, which stands in its first box. */
const brandOf = (head: Uint8Array): string | undefined =>
  latin(head, 4, 8) === 'ftyp' ? latin(head, 8, 12) : undefined;

const riff = (head: Uint8Array, what: string): boolean =>
  latin(head, 0, 4) === 'RIFF' && latin(head, 8, 12) === what;

const pictures = new Set(['heic', 'heix', 'heim', 'heis', 'hevc', 'mif1', 'msf1']);

/** An MPEG audio frame: eleven bits of sync, a version, layer III, a bit rate and a sampling rate that exist. */
const isFrame = (head: Uint8Array): boolean => {
  const [first = 0, second = 0, third = 0] = head;
  return (
    first === 0xff &&
    (second & 0xe0) === 0xe0 &&
    (second & 0x18) !== 0x08 &&
    (second & 0x06) === 0x02 &&
    (third & 0xf0) !== 0xf0 &&
    (third & 0x0c) !== 0x0c
  );
};

/**
 * What a phone, tablet or scanner makes and a browser shows. No form in which a page or a script could stand is among
 * them.
 *
 * Source   PNG (ISO/IEC 15948:2004) 5.2; JPEG (ITU-T T.81) annex B; RIFF and WebP container; ISO/IEC 14496-12 4.3 and
 *          the registered brands; Matroska and EBML (RFC 8794) 11.2.1; Ogg (RFC 3533) 6; ISO/IEC 11172-3 2.4.1.3 and ID3v2;
 *          PDF (ISO 32000-1:2008) 7.5.2. All: memory, held against files that other programs wrote
 */
export const mediaForms: readonly MediaForm[] = [
  {
    types: ['image/png'],
    // the signature, and the header that must come first
    fits: (head) =>
      holds(head, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]) && latin(head, 12, 16) === 'IHDR',
  },
  // the start of the image and the first byte of a segment
  { types: ['image/jpeg'], fits: (head) => holds(head, 0, [0xff, 0xd8, 0xff]) && head.length > 3 },
  { types: ['image/webp'], fits: (head) => riff(head, 'WEBP') },
  { types: ['image/heic', 'image/heif'], fits: (head) => pictures.has(brandOf(head) ?? '') },
  { types: ['video/quicktime', 'video/mp4'], fits: (head) => brandOf(head) === 'qt  ' },
  { types: ['audio/mp4', 'audio/x-m4a', 'video/mp4'], fits: (head) => /^M4[AB] $/.test(brandOf(head) ?? '') },
  {
    types: ['video/mp4', 'audio/mp4', 'audio/x-m4a'],
    fits: (head) =>
      /^(?:iso[m2-9]|mp4[12]|avc1|dash|M4V |MSNV|3gp[4-9]|mmp4|f4v )$/.test(brandOf(head) ?? ''),
  },
  {
    types: ['video/webm', 'audio/webm'],
    fits: (head) =>
      holds(head, 0, [0x1a, 0x45, 0xdf, 0xa3]) && latin(head, 0, headSize).includes('\x42\x82\x84webm'),
  },
  { types: ['audio/wav', 'audio/x-wav', 'audio/wave'], fits: (head) => riff(head, 'WAVE') },
  { types: ['audio/ogg', 'video/ogg', 'application/ogg'], fits: (head) => holds(head, 0, codes('OggS\0')) },
  { types: ['audio/mpeg', 'audio/mp3'], fits: (head) => holds(head, 0, codes('ID3')) || isFrame(head) },
  { types: ['application/pdf'], fits: (head) => holds(head, 0, codes('%PDF-')) },
];

/** The types that a file may have by its first bytes; none where it is no form that is kept. */
export const typesOf = (head: Uint8Array): readonly string[] =>
  mediaForms.find(({ fits }) => fits(head.subarray(0, headSize)))?.types ?? [];
