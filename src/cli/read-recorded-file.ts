import { openArchive } from '../archive/index.ts';
import { accept, type Problem } from '../quantity/problem.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import { recordKinds } from '../record/kinds.ts';
import { verifySigned } from '../record/verify-signed.ts';
import { isArchive } from './is-archive.ts';
import { readRecordsFile } from './read-records-file.ts';
import type { World } from './world.ts';

/** What was recorded, and the pictures to it where the file holds them. */
export interface Recorded {
  readonly records: readonly Envelope[];
  readonly heads: readonly Head[];
  /** Bytes of a picture by its digest; nothing where they are not at hand. */
  readonly picture: (sha256: string) => Promise<Uint8Array | undefined>;
  /** Once no picture is wanted any more. */
  readonly close: () => Promise<void>;
}

type Read =
  | { readonly ok: true; readonly value: Recorded }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly heading?: string };

/** Records out of an archive, as whole as those of a file of their own must be. */
const ofArchive = async (path: string, source: NonNullable<Source>): Promise<Read> => {
  const archive = await openArchive(source);
  if (!archive.ok) return { ...archive, heading: path };
  const { manifest, records, media } = archive.value;
  const { heads } = manifest.records;
  const problems = verifySigned(records, { book: manifest.book, heads, kinds: recordKinds });
  if (problems.length > 0) return { ok: false, problems, heading: path };
  return accept({
    records,
    heads,
    picture: async (sha256) => {
      const named = manifest.media.find((one) => one.sha256 === sha256);
      const bytes = named === undefined ? undefined : await media(named);
      return bytes?.ok === true ? bytes.value : undefined;
    },
    close: source.close,
  });
};

type Opened = Awaited<ReturnType<World['openBytes']>>;
type Source = Extract<Opened, { readonly ok: true }>['value'] | undefined;

/** What was recorded, out of a file of records or an archive; or everything that is broken. */
export const readRecordedFile = async (path: string, world: World): Promise<Read> => {
  const opened = path === '-' ? undefined : await world.openBytes(path);
  const source: Source = opened?.ok === true ? opened.value : undefined;
  if (source !== undefined && (await isArchive(source))) {
    const read = await ofArchive(path, source);
    if (!read.ok) await source.close();
    return read;
  }
  await source?.close();
  const file = await readRecordsFile(path, world);
  if (!file.ok) return file;
  const { records, heads } = file.value;
  return accept({ records, heads, picture: async () => undefined, close: async () => undefined });
};
