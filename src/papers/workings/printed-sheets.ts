import type { Working } from '../../floor/assessment.ts';
import type { Source } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Cited } from './citations.ts';
import { type FormulaNode, formulaTree } from './formula-tree.ts';

export interface PrintedSheet extends Cited {
  readonly title: string;
  readonly id: string;
  readonly formula: readonly (readonly FormulaNode[])[];
  readonly sources: readonly string[];
}

const sourceText = ({ title, edition, place, mark }: Source, { say }: PaperWords): string =>
  say('workings.source', {
    title,
    edition: edition === undefined ? '' : `, ${edition}`,
    place: place === undefined ? '' : `, ${place}`,
    mark: say(`workings.mark.${mark}`),
  });

/** The sheets that workings used, once each, by the order in which they come. */
export const sheetsUsed = (workings: readonly Working[]): ReadonlyMap<string, number> =>
  new Map(workings.map(({ sheet, version }) => [sheet, version]));

/** Sheets by their ids, in the version that is held. */
export const sheetsNamed = (ids: readonly string[]): ReadonlyMap<string, number> =>
  new Map(ids.map((id) => [id, registry.get(id)?.sheet.version ?? 0]));

/** The sheets with their formulas and sources. */
export const printedSheets = (
  used: ReadonlyMap<string, number>,
  marks: ReadonlyMap<string, Cited>,
  paper: PaperWords,
): readonly PrintedSheet[] =>
  [...used].map(([id, version]) => {
    const entry = registry.get(id);
    const unverified = entry === undefined || entry.cases.length === 0;
    return {
      ...marks.get(id)!,
      formula: (entry?.sheet.formula ?? []).map(formulaTree),
      title: paper.inWords(entry?.text.en.title ?? id),
      id: paper.say('workings.sheet.version', { id, version }),
      sources: [
        ...(entry?.sheet.sources ?? []).map((source) => sourceText(source, paper)),
        ...(unverified ? [paper.say('workings.unverified')] : []),
      ],
    };
  });
