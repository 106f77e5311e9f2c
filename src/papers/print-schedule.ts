import { headSize, typesOf } from '../media/index.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import type { ShownPicture } from './schedule/picture-parts.ts';
import schedule from './schedule/schedule.typ?raw';
import { scheduleContent } from './schedule/schedule-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';

/** What the connection schedule is made from besides the book. */
export interface ScheduleSources {
  readonly records: readonly Envelope[];
  /** Bytes of photographs by their digest, as many as are at hand. */
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** Name of the floor on which the line is rebuilt. */
  readonly floor?: string | undefined;
}

/** The connection schedule; of a photograph that no paper can carry it says what it is. */
export const schedulePaper = (
  { records, pictures, floor }: ScheduleSources,
  options: PaperOptions,
  paper: PaperWords,
  { heightByWidth }: Pick<Typesetter, 'heightByWidth'>,
): PaperSource => {
  const shown = new Map<string, ShownPicture>();
  const unprintable = new Map<string, string>();
  const named = new Map<string, Uint8Array>();
  for (const [digest, bytes] of pictures) {
    const height = heightByWidth(bytes);
    if (height === undefined) {
      unprintable.set(digest, typesOf(bytes.subarray(0, headSize))[0] ?? '');
      continue;
    }
    const name = `p${named.size}`;
    named.set(name, bytes);
    shown.set(digest, { name, heightByWidth: height });
  }
  return {
    template: schedule,
    content: scheduleContent({ records, pictures: { shown, unprintable }, floor }, options, paper),
    pictures: named,
  };
};

export const printSchedule = (
  asked: ScheduleSources,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(schedulePaper(asked, options, paper, typesetter), typesetter);
