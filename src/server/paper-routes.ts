import { buffer } from 'node:stream/consumers';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { type Book, readBook } from '../book/index.ts';
import { inTwoLanguages, paperKinds } from '../book/paper-kinds.ts';
import { paperLanguages } from '../book/paper-languages.ts';
import type { PageSize, PaperKind, Typesetter } from '../papers/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { loadTranslation } from '../text/index.ts';
import { routes } from './api.ts';
import type { ServerPorts } from './ports.ts';
import { serverProblem } from './problems.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** What was asked for and the book does not have. */
const askedInVain = (
  { floors = [], line }: Book,
  paper: string,
  { floor, format }: { readonly floor?: string | undefined; readonly format?: string | undefined },
): readonly Problem[] => {
  const notIn = (path: string, given: string | undefined, allowed: readonly string[]): readonly Problem[] =>
    given === undefined || allowed.includes(given)
      ? []
      : [serverProblem('SERVER_REQUEST', path, { given, allowed: allowed.join(', ') })];
  return [
    ...notIn('paper', paper, paperKinds),
    ...(floors.length === 0 ? [serverProblem('SERVER_PAPER_NO_FLOOR', '')] : []),
    ...notIn(
      'floor',
      floors.length === 0 ? undefined : floor,
      floors.map(({ tag }) => tag),
    ),
    ...notIn(
      'format',
      format,
      (line?.formats ?? []).map(({ tag }) => tag),
    ),
  ];
};

/** A picture of the store; nothing where it has not come yet. */
const mediaBytes = async (
  store: ServerPorts['store'],
  book: string,
  digest: string,
): Promise<Uint8Array | undefined> => {
  const media = await store.readMedia(book, digest);
  return media.ok ? await buffer(media.value.content) : undefined;
};

/** The papers of a book as it was saved last, with its records. */
export const paperRoutes = (server: FastifyInstance, { store, now }: ServerPorts): void => {
  let typesetter: Typesetter | undefined;
  server.withTypeProvider<ZodTypeProvider>().route({
    ...routeOptions(routes.readPaper),
    handler: async (request, reply) => {
      const { id, paper } = request.params;
      const { floor, format, page, units, language, beside } = request.query;
      const latest = await store.latestRevision(id);
      if (!latest.ok) return refuseWith(reply, latest.problems);
      const book = readBook(latest.value.text);
      if (!book.ok) return refuseWith(reply, book.problems);
      const wrong = askedInVain(book.value, paper, { floor, format });
      if (wrong.length > 0) return refuseWith(reply, wrong);
      const recorded = await store.readRecords(id);
      if (!recorded.ok) return refuseWith(reply, recorded.problems);
      const heads = await store.heads(id);
      if (!heads.ok) return refuseWith(reply, heads.problems);
      // the typesetter is the largest part of the program: it comes with the first paper
      const { makeTypesetter, printPaper, takenPictures, wantedPictures } = await import(
        '../papers/index.ts'
      );
      typesetter ??= makeTypesetter();
      const { records } = recorded.value;
      const spoken = language ?? paperLanguages(book.value)[0];
      const second =
        beside === undefined || beside === spoken || !inTwoLanguages.has(paper as PaperKind)
          ? undefined
          : { translation: await loadTranslation(beside) };
      const wanted = wantedPictures(paper as PaperKind, book.value, records);
      const { bytes } = printPaper(
        {
          pictures: await takenPictures(wanted, (digest) => mediaBytes(store, id, digest)),
          paper: paper as PaperKind,
          book: book.value,
          records,
          heads: heads.value,
          floor,
          format,
          units: units as UnitSystem | undefined,
          translation: await loadTranslation(spoken),
          beside: second,
        },
        {
          date: now().slice(0, 10),
          hash: latest.value.sha256,
          revision: latest.value.number,
          page: page as PageSize | undefined,
        },
        typesetter,
      );
      const name = `${id.replaceAll(':', '-')}-${paper}.pdf`;
      return reply
        .type('application/pdf')
        .header('content-disposition', `inline; filename="${name}"`)
        .send(Buffer.from(bytes));
    },
  });
};
