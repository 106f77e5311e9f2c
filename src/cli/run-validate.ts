import type * as z from 'zod';
import type { Call, Ended } from './command.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import type { validationSchema } from './validate-document.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** Reads the book of a call and says whether it reads. */
export const runValidate = async ({ operands: [path = '-'], flags }: Call, world: World): Promise<Ended> => {
  const book = await readBookFile(path, world);
  if (!book.ok) return { problems: book.problems, heading: headingOf(path, book) };
  const { about, floors = [] } = book.value;
  const title = about?.title;
  if (flags.has('json')) {
    const document: z.infer<typeof validationSchema> = {
      document: 'twinfloor validation',
      version: 1,
      path,
      valid: true,
      bookVersion: book.value.twinfloor,
      ...(title === undefined ? {} : { title }),
      floors: floors.map(({ tag }) => tag),
    };
    world.out(`${JSON.stringify(document, null, 2)}\n`);
  } else {
    const named = title ?? words.say('validate.blank');
    world.out(`${words.say('validate.fine', { path, title: named, floors: floors.length })}\n`);
  }
  return 0;
};
