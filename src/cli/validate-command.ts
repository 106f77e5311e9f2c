import * as z from 'zod';
import type { Command } from './command.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { words } from './words.ts';

export const validationSchema = z
  .strictObject({
    document: z.literal('twinfloor validation'),
    version: z.literal(1),
    path: z.string(),
    valid: z.literal(true),
    bookVersion: z.number().int(),
    title: z.string().optional(),
    floors: z.array(z.string()).describe('Tags of the floors'),
  })
  .describe('Answer of `twinfloor validate BOOK.json --json` where the book reads; else see problems');

/** Whether a book can be read, with everything that is wrong with it at once. */
export const validateCommand: Command = {
  name: 'validate',
  usage: 'BOOK.json',
  options: [],
  operands: [1, 1],
  examples: ['twinfloor validate examples/gravity.json'],
  run: async ({ operands: [path = '-'], flags }, world) => {
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
  },
};
