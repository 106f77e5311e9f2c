import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';
import { type NumberForm, numberForm } from './number-form.ts';
import { readXml } from './xml.ts';
import { cellText } from './xml-text.ts';

/** The text of a part; undefined where the archive has none. */
export type PartText = (name: string) => Result<string> | undefined;

interface Relation {
  readonly type: string;
  readonly part: string;
}

/** The name of a part that another one refers to; undefined where it leads out of the archive. */
const resolvedName = (from: string, target: string): string | undefined => {
  const steps = target.startsWith('/') ? [] : from.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') {
      if (steps.pop() === undefined) return undefined;
    } else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
};

/** What a part refers to, by id; what lies outside of the file is left alone. */
const relationsOf = (part: string, textOf: PartText): Result<ReadonlyMap<string, Relation>> => {
  const cut = part.lastIndexOf('/') + 1;
  const name = `${part.slice(0, cut)}_rels/${part.slice(cut)}.rels`;
  const relations = new Map<string, Relation>();
  const text = textOf(name);
  if (text === undefined) return accept(relations);
  if (!text.ok) return text;
  const read = readXml(name, text.value, {
    open: (tag, attributes) => {
      if (tag !== 'Relationship' || attributes.get('TargetMode') === 'External') return;
      const target = resolvedName(part, attributes.get('Target') ?? '');
      const type = (attributes.get('Type') ?? '').split('/').at(-1) ?? '';
      if (target !== undefined) relations.set(attributes.get('Id') ?? '', { type, part: target });
    },
  });
  return read.ok ? accept(relations) : read;
};

/** Texts that cells refer to by number. Readings in small print above a word are no part of it. */
const sharedTexts = (name: string | undefined, textOf: PartText): Result<readonly string[]> => {
  const text = name === undefined ? undefined : textOf(name);
  if (name === undefined || text === undefined) return accept([]);
  if (!text.ok) return text;
  const texts: string[] = [];
  let current = '';
  let inText = false;
  let small = 0;
  const read = readXml(name, text.value, {
    open: (tag) => {
      if (tag === 'si') current = '';
      if (tag === 'rPh') small += 1;
      inText = tag === 't' && small === 0;
    },
    text: (piece) => {
      if (inText) current += piece;
    },
    close: (tag) => {
      if (tag === 'rPh') small -= 1;
      if (tag === 'si') texts.push(cellText(current));
      inText = false;
    },
  });
  return read.ok ? accept(texts) : read;
};

/** How the numbers of each style of cell are shown. */
const formsOfStyles = (name: string | undefined, textOf: PartText): Result<readonly NumberForm[]> => {
  const text = name === undefined ? undefined : textOf(name);
  if (name === undefined || text === undefined) return accept([]);
  if (!text.ok) return text;
  const codes = new Map<number, string>();
  const ids: number[] = [];
  let inCells = false;
  const read = readXml(name, text.value, {
    open: (tag, attributes) => {
      if (tag === 'numFmt') codes.set(Number(attributes.get('numFmtId')), attributes.get('formatCode') ?? '');
      if (tag === 'cellXfs') inCells = true;
      if (tag === 'xf' && inCells) ids.push(Number(attributes.get('numFmtId') ?? 0));
    },
    close: (tag) => {
      if (tag === 'cellXfs') inCells = false;
    },
  });
  return read.ok ? accept(ids.map((id) => numberForm(id, codes.get(id)))) : read;
};

export interface WorkbookParts {
  readonly tabs: readonly { readonly name: string; readonly part: string }[];
  readonly shared: readonly string[];
  readonly forms: readonly NumberForm[];
  readonly from1904: boolean;
}

/**
 * What a workbook says beside its tabs: where they stand in the file, the shared texts, how numbers are shown.
 *
 * Problems TABLE_NOT_XLSX and those of the XML
 * Source   ECMA-376 part 1, 18.2, 18.4, 18.8; part 2, 9.3, memory
 */
export const workbookParts = (textOf: PartText): Result<WorkbookParts> => {
  const missing = refuse(problemOf('TABLE_NOT_XLSX', '', { allowed: 'xl/workbook.xml' }));
  const roots = relationsOf('', textOf);
  if (!roots.ok) return roots;
  const main = [...roots.value.values()].find(({ type }) => type === 'officeDocument')?.part;
  const text = main === undefined ? undefined : textOf(main);
  if (main === undefined || text === undefined) return missing;
  if (!text.ok) return text;
  const relations = relationsOf(main, textOf);
  if (!relations.ok) return relations;
  const tabs: { name: string; part: string }[] = [];
  let from1904 = false;
  let isWorkbook = false;
  const read = readXml(main, text.value, {
    open: (tag, attributes) => {
      isWorkbook ||= tag === 'workbook';
      if (tag === 'workbookPr') from1904 = /^(?:1|true|on)$/.test(attributes.get('date1904') ?? '');
      if (tag !== 'sheet') return;
      const relation = relations.value.get(attributes.get('id') ?? '');
      if (relation?.type === 'worksheet')
        tabs.push({ name: attributes.get('name') ?? '', part: relation.part });
    },
  });
  if (!read.ok) return read;
  if (!isWorkbook) return missing;
  if (tabs.length === 0) return refuse(problemOf('TABLE_NOT_XLSX', main, { allowed: 'worksheet' }));
  const named = (type: string): string | undefined =>
    [...relations.value.values()].find((each) => each.type === type)?.part;
  const shared = sharedTexts(named('sharedStrings'), textOf);
  if (!shared.ok) return shared;
  const forms = formsOfStyles(named('styles'), textOf);
  if (!forms.ok) return forms;
  return accept({ tabs, shared: shared.value, forms: forms.value, from1904 });
};
