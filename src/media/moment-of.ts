import { exifMoment } from './exif-moment.ts';
import { filmMoment } from './film-moment.ts';
import { typesOf } from './media-forms.ts';

const latin = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

/** The Exif data of a JPEG: in a segment before the picture itself. */
const exifOfJpeg = (bytes: Uint8Array): Uint8Array | undefined => {
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff; ) {
    const mark = bytes[at + 1] ?? 0;
    // fill bytes may stand before a mark; the picture itself begins at DA
    if (mark === 0xff) {
      at += 1;
      continue;
    }
    if (mark === 0xda || mark === 0xd9) return undefined;
    const size = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    if (size < 2) return undefined;
    if (mark === 0xe1 && latin(bytes, at + 4, at + 10) === 'Exif\0\0') {
      return bytes.subarray(at + 10, at + 2 + size);
    }
    at += 2 + size;
  }
  return undefined;
};

/** The Exif data in a file of chunks side by side, each a size and a name. */
const exifInChunks = (
  bytes: Uint8Array,
  from: number,
  {
    name,
    sizeFirst,
    behind,
  }: { readonly name: string; readonly sizeFirst: boolean; readonly behind: number },
): Uint8Array | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = from; at + 8 <= bytes.length; ) {
    const size = view.getUint32(sizeFirst ? at : at + 4, !sizeFirst);
    const nameAt = sizeFirst ? at + 4 : at;
    if (latin(bytes, nameAt, nameAt + 4) === name) return bytes.subarray(at + 8, at + 8 + size);
    // RIFF pads to even lengths; PNG has a check number behind each
    at += 8 + size + (sizeFirst ? behind : size % 2);
  }
  return undefined;
};

const exifOf = (bytes: Uint8Array, type: string): Uint8Array | undefined => {
  if (type === 'image/jpeg') return exifOfJpeg(bytes);
  if (type === 'image/png') return exifInChunks(bytes, 8, { name: 'eXIf', sizeFirst: true, behind: 4 });
  if (type !== 'image/webp') return undefined;
  const exif = exifInChunks(bytes, 12, { name: 'EXIF', sizeFirst: false, behind: 0 });
  // some programs keep the mark of the JPEG segment before it
  return exif && latin(exif, 0, 6) === 'Exif\0\0' ? exif.subarray(6) : exif;
};

/** When the file itself says that it was taken, as a text; nothing where it says none or is broken. */
export const momentOf = (bytes: Uint8Array): string | undefined => {
  const [type = ''] = typesOf(bytes);
  if (/^(?:video\/(?:mp4|quicktime)|audio\/mp4)$/.test(type)) return filmMoment(bytes);
  const exif = exifOf(bytes, type);
  return exif === undefined ? undefined : exifMoment(exif);
};
