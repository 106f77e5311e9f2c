import { type CaseResult, caseResult } from './case-result.ts';
import type { Source } from './frame.ts';
import type { SheetEntry } from './sheet-entry.ts';
import { unverifiedOutputs } from './unverified-outputs.ts';

/** Below this only the rounding of doubles is left, which differs between engines. */
const rounding = 1e-10;

/** Greatest deviation of a case as a share of the printed figure; of a printed zero, of what is allowed. */
const deviation = ({ figures }: CaseResult): number =>
  Math.max(
    0,
    ...figures.map(({ expected, got, allowed }) => {
      const off = Math.abs(got - expected);
      return off === 0 ? 0 : off / (expected === 0 ? allowed : Math.abs(expected));
    }),
  );

/** Greatest share of its tolerance that a case uses up. */
const used = ({ figures }: CaseResult): number =>
  Math.max(0, ...figures.map(({ expected, got, allowed }) => Math.abs(got - expected) / allowed || 0));

const percent = (share: number): string =>
  share < rounding ? 'rounding' : `${Number((100 * share).toPrecision(2))} %`;

const cell = (text: string): string => text.replaceAll('|', '\\|');

const cited = ({ title, edition, place, mark }: Source): string =>
  cell(`${[title, edition, place].filter((part) => part !== undefined).join(', ')} (${mark})`);

const row = (result: CaseResult): string =>
  [
    '',
    `\`${result.sheet}\``,
    cell(result.case.name),
    percent(deviation(result)),
    `${Math.round(100 * used(result))} %`,
    cell(result.case.tolerance.reason),
    cited(result.case.source),
    '',
  ]
    .join(' | ')
    .trim();

/**
 * The page of evidence: every published case of every sheet with its deviation, worst first, and what none holds.
 *
 * Method   cases by `caseResult`, sorted by the greatest deviation of a printed figure
 * Symbols  entries  sheets with their cases
 * Returns  Markdown
 * Cost     one run of each sheet for each case
 */
export const evidence = (entries: readonly SheetEntry[]): string => {
  const results = entries
    .flatMap((entry) => entry.cases.map((sheetCase) => caseResult(entry, sheetCase)))
    .map((result) => ({ result, off: deviation(result) }))
    .map(({ result, off }) => ({ result, off: off < rounding ? 0 : off }))
    .sort((a, b) => b.off - a.off)
    .map(({ result }) => result);
  const open = entries
    .map((entry) => ({ id: entry.sheet.id, outputs: unverifiedOutputs(entry) }))
    .filter(({ outputs }) => outputs.length > 0);
  return [
    '# Evidence',
    '',
    'Made by `npx vitest run src/sheets -u` from the cases that stand beside the sheets. Every calculation is held',
    'against something outside the project: *read* in the source named, *computed* by an independent program, or',
    'from *memory*, which counts as no check. Worst deviation first.',
    '',
    `${results.length} cases of ${entries.length} sheets.`,
    '',
    '## Unverified',
    '',
    ...(open.length === 0
      ? ['No output is without a case.']
      : open.map(({ id, outputs }) => `- \`${id}\`: ${outputs.join(', ')}`)),
    '',
    '## Cases',
    '',
    '| Sheet | Case | Deviation | Of what is allowed | Why that is allowed | Source |',
    '| --- | --- | ---: | ---: | --- | --- |',
    ...results.map(row),
    '',
  ].join('\n');
};
