import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { pointerOf } from './pointer.ts';

/** Parts within parts beyond this are no book: its own form is 10 deep. */
export const deepest = 64;

const number = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const space = /[ \t\n\r]*/y;
const word = /true|false|null/y;

const hex4 = /[0-9a-fA-F]{4}/y;

/** Where the string that begins at `from` ends, behind its closing mark; undefined where it is none. */
const endOfString = (text: string, from: number): number | undefined => {
  if (text[from] !== '"') return undefined;
  for (let at = from + 1; at < text.length; at += 1) {
    const letter = text[at]!;
    if (letter === '"') return at + 1;
    if (letter < ' ') return undefined;
    if (letter !== '\\') continue;
    at += 1;
    const escaped = text[at];
    if (escaped === 'u') {
      hex4.lastIndex = at + 1;
      if (!hex4.test(text)) return undefined;
      at += 4;
    } else if (escaped === undefined || !'"\\/bfnrt'.includes(escaped)) return undefined;
  }
  return undefined;
};

interface Open {
  readonly list: boolean;
  readonly keys: Set<string>;
  /** Where we are in it: the last key, or the place in the list. */
  at: string | number;
}

const lineAndColumn = (text: string, offset: number): { line: number; column: number } => {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length, column: before[before.length - 1]!.length + 1 };
};

/**
 * Reads JSON text and says where and what is wrong in it, the same in every browser: the place where it breaks
 * off with what could stand there, nesting without end, and keys that stand twice in one object, of which one
 * would be lost without a word.
 *
 * Method   one pass over the text without recursion, then the platform's own reader
 * Problems BOOK_JSON_BROKEN, BOOK_TOO_DEEP, BOOK_KEY_TWICE
 * Cost     O(length of the text)
 * Source   RFC 8259
 */
export const readJsonText = (text: string): Result<unknown> => {
  const open: Open[] = [];
  const problems: Problem[] = [];
  let offset = 0;

  const path = (): string => pointerOf(open.map((each) => each.at).filter((at) => at !== ''));
  const place = (): Record<string, number> => lineAndColumn(text, offset);
  const broken = (...allowed: readonly string[]): Result<never> =>
    refuse(...problems, {
      code: 'BOOK_JSON_BROKEN',
      path: path(),
      given: offset < text.length ? text.slice(offset, offset + 20) : '',
      allowed,
      parts: place(),
    });
  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = offset;
    const found = pattern.exec(text)?.[0];
    if (found !== undefined) offset += found.length;
    return found;
  };

  const takeString = (): string | undefined => {
    const end = endOfString(text, offset);
    if (end === undefined) return undefined;
    const found = text.slice(offset, end);
    offset = end;
    return found;
  };

  let wants: 'value' | 'first' | 'key' | 'after' = 'value';
  for (;;) {
    take(space);
    const inner = open[open.length - 1];
    const letter = text[offset];
    if (wants === 'after') {
      if (inner === undefined) {
        if (offset < text.length) return broken('end');
        break;
      }
      if (letter === (inner.list ? ']' : '}')) {
        offset += 1;
        open.pop();
      } else if (letter === ',') {
        offset += 1;
        if (inner.list) inner.at = Number(inner.at) + 1;
        wants = inner.list ? 'value' : 'key';
      } else return broken(',', inner.list ? ']' : '}');
      continue;
    }
    if (wants === 'first' && inner !== undefined && letter === (inner.list ? ']' : '}')) {
      offset += 1;
      open.pop();
      wants = 'after';
      continue;
    }
    if (wants === 'key' || (wants === 'first' && inner !== undefined && !inner.list)) {
      const from = offset;
      const key = takeString();
      if (key === undefined || inner === undefined)
        return broken(...(wants === 'first' ? ['key', '}'] : ['key']));
      inner.at = JSON.parse(key) as string;
      if (inner.keys.has(inner.at)) {
        const parts = lineAndColumn(text, from);
        problems.push({ code: 'BOOK_KEY_TWICE', path: path(), given: inner.at, parts });
      }
      inner.keys.add(inner.at);
      take(space);
      if (text[offset] !== ':') return broken(':');
      offset += 1;
      wants = 'value';
      continue;
    }
    if (letter === '{' || letter === '[') {
      if (open.length >= deepest) {
        return refuse(...problems, {
          code: 'BOOK_TOO_DEEP',
          path: path(),
          allowed: String(deepest),
          parts: place(),
        });
      }
      open.push({ list: letter === '[', keys: new Set(), at: letter === '[' ? 0 : '' });
      offset += 1;
      wants = 'first';
      continue;
    }
    const plain = letter === '"' ? takeString() : (take(word) ?? take(number));
    if (plain === undefined) return broken(...(wants === 'first' ? ['value', ']'] : ['value']));
    wants = 'after';
  }
  if (problems.length > 0) return refuse(...problems);
  return accept(JSON.parse(text) as unknown);
};
