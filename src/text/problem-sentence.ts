import type { Catalogue } from './catalogue.ts';
import type { Part } from './message.ts';

/** A problem as the folders state it; named by its shape, since the catalogue knows none of them. */
export interface StatedProblem {
  readonly code: string;
  readonly path: string;
  readonly given?: unknown;
  readonly allowed?: string | readonly string[];
  readonly parts?: Readonly<Record<string, Part>>;
}

/** Longest piece of what came that a sentence repeats: enough to find the place, not a page of it. */
const longest = 80;

const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  return text.length > longest ? `${text.slice(0, longest)}...` : text;
};

/** Parts that name a kind of quantity; its words stand under `kind.` where the catalogue has them. */
const namesKind = new Set(['of', 'asked']);

/** The sentence of a problem: its code's words with path, what came, what is allowed and its own parts put in. */
export const problemSentence = (catalogue: Catalogue, problem: StatedProblem, locale?: string): string => {
  const { code, path, given, allowed } = problem;
  const own = Object.entries(problem.parts ?? {}).map(([name, part]) => {
    const isKind = namesKind.has(name) && catalogue.has(`kind.${part}`);
    return [name, isKind ? catalogue.say(`kind.${part}`, {}, locale) : part] as const;
  });
  const parts = {
    path,
    given: shown(given),
    allowed: typeof allowed === 'string' ? allowed : (allowed ?? []).join(', '),
    ...Object.fromEntries(own),
  };
  return catalogue.has(code) ? catalogue.say(code, parts, locale) : `${path}: ${code}`;
};
