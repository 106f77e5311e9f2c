import type { FastifyInstance, FastifyReply } from 'fastify';
import type { Problem } from '../../quantity/problem.ts';
import { serverProblem } from '../problems.ts';
import { refuseWith } from '../refuse-with.ts';
import type { Gate, Visitor } from './hall-ports.ts';
import styles from './pairing-page.css?raw';
import { type PairingPage, pairingPage } from './pairing-page.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** The joined device that asks, on the listener of the hall. */
    visitor: Visitor | null;
  }
}

/** A form with a code and a name is short; whatever is longer is something else. */
const formLimit = 4096;

const textOf = (given: unknown, most: number): string =>
  typeof given === 'string' ? given.slice(0, most) : '';

/** The fields of the form, or of the address in the picture. */
const fieldsOf = (
  given: unknown,
): { readonly code: string; readonly name: string; readonly book: string } => {
  const { code, name, book } = (given ?? {}) as Record<string, unknown>;
  return { code: textOf(code, 40), name: textOf(name, 200), book: textOf(book, 128) };
};

/** Where a device goes once it has joined: to the checks of the book that the laptop showed, or to the newest one. */
const afterwards = (book: string): string =>
  /^[A-Za-z0-9][A-Za-z0-9._:-]{0,127}$/.test(book)
    ? `/books/${encodeURIComponent(book)}/proof?step=run`
    : '/';

const placeOf = (url: string): string => url.split('?')[0] ?? '';

/**
 * Before anything of the server stands the gate: who has not joined gets the page with the form, its style, and
 * from the places of data one sentence; nothing else.
 */
export const hallGate = async (server: FastifyInstance, gate: Gate): Promise<void> => {
  const sendPage = (reply: FastifyReply, page: Partial<PairingPage>, problems: readonly Problem[] = []) =>
    reply
      .header('cache-control', 'no-store')
      // without a referrer a form would come from nowhere, and the guard lets no such write in
      .header('referrer-policy', 'same-origin')
      .type('text/html; charset=utf-8')
      .send(
        pairingPage({
          way: gate.way,
          code: '',
          name: '',
          book: '',
          ...page,
          problems,
          translation: reply.request.translation,
        }),
      );

  server.decorateRequest('visitor', null);
  server.addHook('onRequest', async (request, reply) => {
    const visitor = gate.visitor(request.headers.cookie);
    if (visitor !== undefined) {
      request.visitor = visitor;
      return undefined;
    }
    const place = placeOf(request.url);
    if (place === '/join' || place === '/join.css') return undefined;
    if (place.startsWith('/api/')) return refuseWith(reply, [serverProblem('HALL_NOT_JOINED', 'cookie')]);
    return sendPage(reply.code(403), {});
  });

  await server.register(async (form) => {
    form.addContentTypeParser(
      'application/x-www-form-urlencoded',
      { parseAs: 'string', bodyLimit: formLimit },
      (_request, body, done) => done(null, Object.fromEntries(new URLSearchParams(body as string))),
    );
    form.get('/join.css', async (_request, reply) => reply.type('text/css; charset=utf-8').send(styles));
    form.get('/join', async (request, reply) => {
      const { code, book } = fieldsOf(request.query);
      return request.visitor === null
        ? sendPage(reply, { code, book })
        : reply.redirect(afterwards(book), 303);
    });
    form.post('/join', async (request, reply) => {
      const { code, name, book } = fieldsOf(request.body);
      const joined = await gate.join({ from: request.ip, code, name });
      if (!joined.ok) return sendPage(reply.code(403), { code, name, book }, joined.problems);
      return reply.header('set-cookie', joined.value).redirect(afterwards(book), 303);
    });
  });
};
