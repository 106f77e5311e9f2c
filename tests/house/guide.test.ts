import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const guide = join(root, 'docs', 'guide');
const pictures = join(guide, 'pictures');

const linkPattern = /!?\[[^\]]*\]\(([^)\s]+)\)/g;

/** Paths of what a page links to or shows, without addresses of the web and places within a page. */
const linksOf = (page: string): readonly string[] =>
  [...readFileSync(page, 'utf8').matchAll(linkPattern)]
    .map(([, to = '']) => to.replace(/#.*$/, ''))
    .filter((to) => to !== '' && !/^[a-z]+:/.test(to))
    .map((to) => join(dirname(page), to));

const pages = readdirSync(guide)
  .filter((name) => name.endsWith('.md'))
  .map((name) => join(guide, name));

const reachable = (from: string): ReadonlySet<string> => {
  const seen = new Set([from]);
  for (const page of seen) {
    for (const to of linksOf(page)) if (pages.includes(to)) seen.add(to);
  }
  return seen;
};

const named = (paths: Iterable<string>): readonly string[] =>
  [...paths].map((path) => relative(root, path)).toSorted();

describe('the user guide', () => {
  it('links to nothing that is not there', () => {
    const all = [...pages, join(root, 'README.md'), join(root, 'docs', 'physics.md')].flatMap(linksOf);
    expect(all.length).toBeGreaterThan(pages.length);
    expect(named(all.filter((to) => !existsSync(to)))).toEqual([]);
  });

  it('shows every picture that was taken, and no other', () => {
    const shown = new Set(pages.flatMap(linksOf).filter((to) => dirname(to) === pictures));
    expect(named(shown)).toEqual(named(readdirSync(pictures).map((name) => join(pictures, name))));
  });

  it('says in words what each picture shows', () => {
    const mute = pages.filter((page) => /!\[\s*\]\(/.test(readFileSync(page, 'utf8')));
    expect(named(mute)).toEqual([]);
  });

  it('is read from its first page, which the README of the project names', () => {
    const first = join(guide, 'README.md');
    expect(linksOf(join(root, 'README.md'))).toContain(first);
    expect(named(reachable(first))).toEqual(named(pages));
  });

  it('has pictures that weigh less than 3 MB together', () => {
    const bytes = readdirSync(pictures).map((name) => statSync(join(pictures, name)).size);
    expect(bytes.reduce((a, b) => a + b, 0)).toBeLessThan(3e6);
  });
});
