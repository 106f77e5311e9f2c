import { schemaWords } from '../../book/schema-words.ts';

/** Every catalogue of words but those of the command line, which speaks English. */
const catalogues = import.meta.glob<Readonly<Record<string, unknown>>>(
  ['../../**/*.text.ts', '!../../cli/**'],
  { eager: true },
);

const textsOf = (node: unknown): readonly string[] => {
  if (typeof node === 'string') return [node];
  return node !== null && typeof node === 'object' ? Object.values(node).flatMap(textsOf) : [];
};

/** The English of a bundle, or a list of messages that bundles are put together from. */
const englishOf = (exported: unknown): readonly string[] => {
  if (exported === null || typeof exported !== 'object') return [];
  return textsOf('en' in exported ? exported.en : exported);
};

/** What has no letter of its own, such as `{name}, {of}`, may stay as it is. */
export const isWorded = (text: string): boolean => /\p{L}/u.test(text.replace(/\{\w+\}/gu, ''));

/** Every English message of pages and papers, with the folder of `src` that says it: the first by the alphabet. */
export const englishMessages = (): ReadonlyMap<string, string> => {
  const said = [
    ...Object.entries(catalogues).flatMap(([path, module]) => {
      const [area = ''] = path.replace(/^(?:\.\.\/)+/, '').split('/');
      const own = path.startsWith('../../') ? area : 'text';
      return Object.values(module)
        .flatMap(englishOf)
        .map((text) => [own, text] as const);
    }),
    ...textsOf(schemaWords()).map((text) => ['book', text] as const),
  ].toSorted(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0));
  const messages = new Map<string, string>();
  for (const [area, text] of said) if (text !== '' && !messages.has(text)) messages.set(text, area);
  return messages;
};
