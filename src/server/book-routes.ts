import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { readBook } from '../book/index.ts';
import { accept, type Result } from '../quantity/problem.ts';
import type { Revision, RevisionEntry, Store } from '../store/store.ts';
import { type RevisionSummary, routes, type Revision as TravellingRevision } from './api.ts';
import { bookTitle } from './book-title.ts';
import type { ServerPorts } from './ports.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** Who wrote it, where the page names nobody. */
const unnamed = 'unnamed';

const summary = (entry: RevisionEntry): RevisionSummary => {
  const { book, number, basedOn, author, reason, savedAt, sha256 } = entry;
  return {
    book,
    number,
    ...(basedOn === undefined ? {} : { basedOn }),
    author,
    ...(reason === undefined ? {} : { reason }),
    savedAt,
    sha256,
  };
};

const whole = (revision: Revision): TravellingRevision => ({ ...summary(revision), text: revision.text });

const latestNumber = async (store: Store, book: string): Promise<number | undefined> => {
  const latest = await store.latestRevision(book);
  return latest.ok ? latest.value.number : undefined;
};

const blankBook = (title: string | undefined): string =>
  `${JSON.stringify({ twinfloor: 1, ...(title === undefined ? {} : { about: { title } }) }, null, 2)}\n`;

/** What was saved, with its text: the answer shows exactly what a later reading gives. */
const saved = (entry: Result<RevisionEntry>, text: string): Result<TravellingRevision> =>
  entry.ok ? accept({ ...summary(entry.value), text }) : entry;

/** Books and their revisions. A text is kept as it came, once it reads as a book without a single problem. */
export const bookRoutes = (server: FastifyInstance, { store, now, makeId }: ServerPorts): void => {
  const typed = server.withTypeProvider<ZodTypeProvider>();

  typed.route({
    ...routeOptions(routes.listBooks),
    handler: async () => {
      const books = await store.listBooks();
      return Promise.all(
        books.map(async ({ book, latest }) => {
          const revision = await store.latestRevision(book);
          const title = revision.ok ? bookTitle(revision.value.text) : '';
          return { id: book, title, revision: latest.number, savedAt: latest.savedAt };
        }),
      );
    },
  });

  typed.route({
    ...routeOptions(routes.createBook),
    handler: async (request, reply) => {
      const { id, title, author = unnamed, reason } = request.body;
      const text = request.body.text ?? blankBook(title);
      const book = readBook(text);
      if (!book.ok) return refuseWith(reply, book.problems);
      const entry = await store.createBook({
        book: id ?? makeId(),
        text,
        author,
        ...(reason === undefined ? {} : { reason }),
        at: now(),
      });
      const revision = saved(entry, text);
      return revision.ok ? reply.code(201).send(revision.value) : refuseWith(reply, revision.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.readBook),
    handler: async (request, reply) => {
      const latest = await store.latestRevision(request.params.id);
      return latest.ok ? whole(latest.value) : refuseWith(reply, latest.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.listRevisions),
    handler: async (request, reply) => {
      const entries = await store.listRevisions(request.params.id);
      return entries.ok ? entries.value.map(summary) : refuseWith(reply, entries.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.readRevision),
    handler: async (request, reply) => {
      const revision = await store.readRevision(request.params.id, request.params.number);
      return revision.ok ? whole(revision.value) : refuseWith(reply, revision.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.listAside),
    handler: async (request, reply) => {
      const aside = await store.asideRevisions(request.params.id);
      if (!aside.ok) return refuseWith(reply, aside.problems);
      return aside.value.map(({ follows: _, ...one }) => one);
    },
  });

  typed.route({
    ...routeOptions(routes.readAside),
    handler: async (request, reply) => {
      const text = await store.revisionText(request.params.id, request.params.sha256);
      return text.ok ? { text: text.value } : refuseWith(reply, text.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.saveRevision),
    handler: async (request, reply) => {
      const { text, basedOn, author = unnamed, reason } = request.body;
      const { id } = request.params;
      const book = readBook(text);
      if (!book.ok) return refuseWith(reply, book.problems);
      const entry = await store.appendRevision({
        book: id,
        text,
        basedOn,
        author,
        ...(reason === undefined ? {} : { reason }),
        at: now(),
      });
      const revision = saved(entry, text);
      if (revision.ok) return reply.code(201).send(revision.value);
      const newest = revision.problems.some(({ code }) => code === 'STORE_CONFLICT')
        ? await latestNumber(store, id)
        : undefined;
      return refuseWith(reply, revision.problems, newest);
    },
  });
};
