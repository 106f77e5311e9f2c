import written from './written-by-others.json' with { type: 'json' };

/**
 * Small files that other programs wrote, so that what is told of them is told of the form and not of ourselves:
 * pictures by Pillow 12.3.0, films and sounds by FFmpeg 7.0.2. The pictures were given the moment of taking
 * 2027:04:19 09:10:11, offset +01:00, and of change 2027:04:19 10:00:00; the films the creation time
 * 2027-04-19T08:10:11Z.
 */
export const writtenByOthers = Object.fromEntries(
  Object.entries(written).map(([name, text]) => [
    name,
    Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
  ]),
) as Readonly<Record<keyof typeof written, Uint8Array<ArrayBuffer>>>;
