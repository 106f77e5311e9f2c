const extensions: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'image/heif': 'heif',
  'video/mp4': 'mp4',
  'video/quicktime': 'mov',
  'video/webm': 'webm',
  'video/ogg': 'ogv',
  'audio/mpeg': 'mp3',
  'audio/mp3': 'mp3',
  'audio/mp4': 'm4a',
  'audio/x-m4a': 'm4a',
  'audio/webm': 'weba',
  'audio/wav': 'wav',
  'audio/ogg': 'ogg',
  'application/pdf': 'pdf',
};

export const manifestName = 'manifest.json';
export const recordsName = 'book.records';
export const revisionName = (sha256: string): string => `revisions/${sha256}.json`;

/** The ending lets whoever unpacks the archive without this program look at what is in it. */
export const mediaName = (sha256: string, mediaType: string): string =>
  `media/${sha256}.${extensions[mediaType] ?? 'bin'}`;
