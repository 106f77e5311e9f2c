import type { Book } from '../../book/index.ts';
import { memberName } from '../../book/member-name.ts';
import { stepsOf } from '../../book/pointer.ts';
import type { Parts } from '../../text/index.ts';
import { spaced } from './schema-words.ts';

type Say = (key: string, parts?: Parts) => string;
type Has = (key: string) => boolean;

/** The word for the last step of a path: the field itself, by the list or part that it stands in where that matters. */
export const fieldName = (path: string, say: Say, has: Has): string => {
  const own = memberName(stepsOf(path));
  if (own !== undefined) return own;
  const steps = path.split('/').filter((step) => step !== '' && step !== '-' && !/^\d+$/.test(step));
  const key = steps.at(-1) ?? '';
  const within = `field.${steps.at(-2)}.${key}`;
  if (has(within)) return say(within);
  return has(`field.${key}`) ? say(`field.${key}`) : spaced(key);
};

/** The name of the thing in which a place of the book stands: the run piece of a bore, the station of a dwell. */
export const thingName = (book: Book, path: string): string => {
  let node: unknown = book;
  let found = '';
  for (const step of path.split('/').slice(1)) {
    node = typeof node === 'object' && node !== null ? (node as Record<string, unknown>)[step] : undefined;
    if (typeof node !== 'object' || node === null) break;
    const { name, tag } = node as { name?: unknown; tag?: unknown };
    if (typeof name === 'string') found = name;
    else if (typeof tag === 'string') found = tag;
  }
  return found;
};

/** A place of the book in words: the names met on the way, then the field. */
export const placeName = (book: Book, path: string, say: Say, has: Has): string => {
  const names: string[] = [];
  let node: unknown = book;
  const steps = path.split('/').slice(1);
  for (const step of steps.slice(0, -1)) {
    node = typeof node === 'object' && node !== null ? (node as Record<string, unknown>)[step] : undefined;
    if (typeof node !== 'object' || node === null) break;
    const { name, tag } = node as { name?: unknown; tag?: unknown };
    if (typeof name === 'string') names.push(name);
    else if (typeof tag === 'string') names.push(tag);
  }
  return [...names, fieldName(path, say, has)].join(', ');
};
