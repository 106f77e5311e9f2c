import temml from 'temml';
import { describe, expect, it } from 'vitest';
import { sheetEntries } from '../../sheets/registry.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { type FormulaNode, formulaTree } from './formula-tree.ts';

const flat = (nodes: readonly FormulaNode[]): string =>
  nodes
    .map((node) =>
      typeof node === 'string'
        ? node
        : Object.values(node)
            .flat(1)
            .map((part) => flat([part].flat()))
            .join(''),
    )
    .join('');

const formulas = sheetEntries.flatMap(({ sheet }) => sheet.formula.map((tex) => [sheet.id, tex] as const));

/** What MathML says in letters, without what tells only how they stand. */
const said = (mathml: string): string =>
  mathml
    .replace(/<annotation[\s\S]*?<\/annotation>/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&');

/** Letters that two typesetters write otherwise, as one. */
const alike = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{Mn}|[\s\u2061-\u2064\u200b]/gu, '')
    .replace(/[-−–]/g, '-')
    .replace(/⋅/g, '·')
    .replace(/∘/g, '°')
    .replace(/∗/g, '*')
    .replace(/⋯/g, '...')
    .replace(/[ϵε]/g, 'ε')
    .replace(/[ϕφ]/g, 'φ')
    .replace(/ˉ|¯|‾|˙|\^|_|ˆ/g, '');

describe('a formula on paper', () => {
  it('has every letter of every sheet as another typesetter of TeX reads it, in its order', () => {
    const other: string[] = [];
    for (const [id, tex] of formulas) {
      const wanted = alike(
        said(temml.renderToString(tex.replace(/\\binom{(\w)}{(\w)}/g, 'C($1, $2)'), { throwOnError: true })),
      );
      const own = alike(flat(formulaTree(tex)));
      const named = wanted
        .replace(/⌈/g, 'ceil(')
        .replace(/⌊/g, 'floor(')
        .replace(/[⌉⌋]/g, ')')
        .replace(/∓/g, '-/+')
        .replace(/∝/g, '~')
        .replace(/∈/g, 'in')
        .replace(/√/g, '');
      if (own !== named) other.push(`${id}: ${own} | ${named}`);
    }
    expect(other).toEqual([]);
  });

  it('needs no letter that the fonts lack', () => {
    const { has } = makeTypesetter();
    const letters = new Set(formulas.flatMap(([, tex]) => [...flat(formulaTree(tex))]));
    expect([...letters].filter((letter) => !has(letter.codePointAt(0)!))).toEqual([]);
  });
});
