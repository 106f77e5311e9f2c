import { Readable } from 'node:stream';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { largestMedia } from '../media/index.ts';
import { routes } from './api.ts';
import { partOf } from './byte-range.ts';
import type { ServerPorts } from './ports.ts';
import { serverProblem } from './problems.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** A file under its digest never changes. */
const kept = 'private, max-age=31536000, immutable';

/** Whatever a file holds, it runs nothing and asks for nothing, also where somebody opens it by itself. */
const sandboxed = "sandbox; default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; media-src 'self'";

const headersOf = (mediaType: string, sha256: string): Readonly<Record<string, string>> => ({
  'content-type': mediaType,
  'cache-control': kept,
  'content-security-policy': sandboxed,
  'x-content-type-options': 'nosniff',
  'accept-ranges': 'bytes',
  etag: `"${sha256}"`,
  // a browser shows no document in a sandbox: it is saved
  ...(mediaType === 'application/pdf'
    ? { 'content-disposition': `attachment; filename="${sha256.slice(0, 12)}.pdf"` }
    : {}),
});

/** Pictures, films and sounds: put under their digest, read whole or in part. */
export const mediaRoutes = async (server: FastifyInstance, { store }: ServerPorts): Promise<void> => {
  // a scope of its own: here alone a body is a file, taken as it comes and looked at in the store
  await server.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser('*', (_request, payload, done) => done(null, payload));
    const typed = scope.withTypeProvider<ZodTypeProvider>();

    typed.route({
      ...routeOptions(routes.putMedia),
      handler: async (request, reply) => {
        const { id, sha256 } = request.params;
        const { 'content-type': mediaType = '', 'content-length': length } = request.headers;
        if (Number(length) > largestMedia) {
          const allowed = `${largestMedia / 1024 / 1024} MB`;
          // what is still on its way is not waited for
          reply.header('connection', 'close');
          return refuseWith(reply, [serverProblem('SERVER_BODY_TOO_LARGE', 'body', { allowed })]);
        }
        const chunks = (request.body as Readable | null | undefined) ?? [];
        const put = await store.putMedia(id, { sha256, mediaType }, chunks as AsyncIterable<Uint8Array>);
        if (!put.ok) return refuseWith(reply, put.problems);
        const { isNew, ...entry } = put.value;
        return reply.code(isNew ? 201 : 200).send(entry);
      },
    });
  });

  const typed = server.withTypeProvider<ZodTypeProvider>();

  typed.route({
    ...routeOptions(routes.listMedia),
    handler: async (request, reply) => {
      const media = await store.listMedia(request.params.id);
      return media.ok ? [...media.value] : refuseWith(reply, media.problems);
    },
  });

  typed.route({
    ...routeOptions(routes.readMedia),
    handler: async (request, typedReply) => {
      // what is sent is bytes, of which the schema says nothing
      const reply: FastifyReply = typedReply;
      const { id, sha256 } = request.params;
      const { range, 'if-none-match': seen } = request.headers;
      const whole = await store.readMedia(id, sha256);
      if (!whole.ok) return refuseWith(reply, whole.problems);
      const { mediaType, bytes } = whole.value;
      reply.headers(headersOf(mediaType, sha256));
      if (seen === `"${sha256}"`) return reply.code(304).send();
      const part = partOf(range, bytes);
      if (part === undefined) {
        return reply.header('content-length', bytes).send(Readable.from(whole.value.content));
      }
      if (part === 'outside') return reply.code(416).header('content-range', `bytes */${bytes}`).send();
      const asked = await store.readMedia(id, sha256, part);
      if (!asked.ok) return refuseWith(reply, asked.problems);
      return reply
        .code(206)
        .header('content-range', `bytes ${part.from}-${part.to - 1}/${bytes}`)
        .header('content-length', part.to - part.from)
        .send(Readable.from(asked.value.content));
    },
  });
};
