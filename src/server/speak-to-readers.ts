import type { FastifyInstance } from 'fastify';
import { type Language, languageOf, loadTranslation, type Translation } from '../text/index.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** What is said to the sender in place of the English; null where that is what they read. */
    translation: Translation | null;
  }
}

/** Of the languages that a browser names the first: what comes behind it is a guess of the browser's maker. */
const firstOf = (accepted: string | undefined): Language =>
  languageOf((accepted ?? '').split(/[,;]/)[0] ?? '');

/** Lets each request know the language of whoever sent it; a table is read when its first reader comes. */
export const speakToReaders = (server: FastifyInstance): void => {
  const read = new Map<Language, Promise<Translation | undefined>>();
  server.decorateRequest('translation', null);
  server.addHook('onRequest', async (request) => {
    const language = firstOf(request.headers['accept-language']);
    if (language === 'en') return;
    const known = read.get(language) ?? loadTranslation(language);
    read.set(language, known);
    request.translation = (await known) ?? null;
  });
};
