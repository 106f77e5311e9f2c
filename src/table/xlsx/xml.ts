import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';

export type Attributes = ReadonlyMap<string, string>;

/** What is told while a part is read from its beginning to its end; names come without their prefix. */
export interface XmlListener {
  readonly open?: (name: string, attributes: Attributes) => Problem | undefined;
  readonly close?: (name: string) => Problem | undefined;
  readonly text?: (text: string) => void;
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const charOf = (reference: string): string | undefined => {
  if (!reference.startsWith('#')) return Object.hasOwn(named, reference) ? named[reference] : undefined;
  const code = /^#x[0-9a-f]{1,6}$/i.test(reference)
    ? Number.parseInt(reference.slice(2), 16)
    : /^#[0-9]{1,7}$/.test(reference)
      ? Number(reference.slice(1))
      : -1;
  return code < 0 || code > 0x10ffff ? undefined : String.fromCodePoint(code);
};

/** Text with the five references of XML and numbered characters put in; undefined where there is another. */
const resolved = (text: string): string | undefined => {
  if (!text.includes('&')) return text;
  let unknown = false;
  const out = text.replace(/&([^;&<]{0,12};?)/g, (_, reference: string) => {
    const char = reference.endsWith(';') ? charOf(reference.slice(0, -1)) : undefined;
    unknown ||= char === undefined;
    return char ?? '';
  });
  return unknown ? undefined : out;
};

const local = (name: string): string => name.slice(name.indexOf(':') + 1);

const namePattern = /[^\s/>=<"']+/y;
const attributePattern = /\s+([^\s/>=<"']+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
const endPattern = /\s*(\/?)>/y;

const matchAt = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

/** Deeper than any part of a spreadsheet. */
const deepest = 100;

/**
 * Reads well-formed XML as a spreadsheet's parts use it and tells a listener.
 *
 * Method   one pass; no document type, so that no entity can be declared: nothing is fetched and nothing grows
 * Problems TABLE_XML_DOCTYPE, TABLE_XML_BROKEN, and those that the listener gives back, which end the reading
 * Cost     O(length)
 */
export const readXml = (part: string, xml: string, listener: XmlListener): Result<undefined> => {
  const broken = (): Result<never> => refuse(problemOf('TABLE_XML_BROKEN', part));
  const within: string[] = [];
  let at = 0;
  let begun = false;
  while (at < xml.length) {
    const tag = xml.indexOf('<', at);
    const until = tag < 0 ? xml.length : tag;
    if (until > at && within.length > 0) {
      const text = resolved(xml.slice(at, until).replaceAll('\r\n', '\n'));
      if (text === undefined) return broken();
      listener.text?.(text);
    } else if (/\S/.test(xml.slice(at, until).replace('\ufeff', ''))) return broken();
    if (tag < 0) break;
    if (xml.startsWith('<!DOCTYPE', tag)) return refuse(problemOf('TABLE_XML_DOCTYPE', part));
    const special = xml.startsWith('<!--', tag)
      ? '-->'
      : xml.startsWith('<![CDATA[', tag)
        ? ']]>'
        : xml[tag + 1] === '?'
          ? '?>'
          : undefined;
    if (special !== undefined) {
      const end = xml.indexOf(special, tag + 2);
      if (end < 0) return broken();
      if (special === ']]>') listener.text?.(xml.slice(tag + 9, end));
      at = end + special.length;
      continue;
    }
    const closes = xml[tag + 1] === '/';
    const name = matchAt(namePattern, xml, tag + (closes ? 2 : 1))?.[0];
    if (name === undefined) return broken();
    at = tag + (closes ? 2 : 1) + name.length;
    const attributes = new Map<string, string>();
    for (
      let found = matchAt(attributePattern, xml, at);
      found !== null;
      found = matchAt(attributePattern, xml, at)
    ) {
      const value = resolved(found[2] ?? found[3] ?? '');
      if (closes || value === undefined) return broken();
      attributes.set(local(found[1] as string), value);
      at += found[0].length;
    }
    const end = matchAt(endPattern, xml, at);
    if (end === null) return broken();
    at += end[0].length;
    if (closes) {
      if (end[1] !== '' || within.pop() !== name) return broken();
      const problem = listener.close?.(local(name));
      if (problem) return refuse(problem);
      continue;
    }
    if (within.length === 0 && begun) return broken();
    begun = true;
    if (within.length >= deepest) return broken();
    const problem = listener.open?.(local(name), attributes);
    if (problem) return refuse(problem);
    if (end[1] === '/') {
      const closing = listener.close?.(local(name));
      if (closing) return refuse(closing);
    } else within.push(name);
  }
  return begun && within.length === 0 ? accept(undefined) : broken();
};
