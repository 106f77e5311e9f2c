import { type ReactElement, useMemo } from 'react';
import { type CaseResult, caseResult } from '../../sheets/case-result.ts';
import type { SheetEntry } from '../../sheets/sheet-entry.ts';
import { unverifiedOutputs } from '../../sheets/unverified-outputs.ts';
import { useWords } from '../state/page-context.ts';
import { sourceText } from '../working/working-body.tsx';

/** Greatest deviation of a case as a share of the printed value; infinite where the sheet refused it. */
const deviation = ({ figures, problems }: CaseResult): number =>
  problems.length > 0
    ? Number.POSITIVE_INFINITY
    : Math.max(
        0,
        ...figures.map(({ expected, got }) =>
          expected === 0 ? Math.abs(got) : Math.abs(got / expected - 1),
        ),
      );

const agrees = ({ figures, problems, notesMissing }: CaseResult): boolean =>
  problems.length === 0 && notesMissing.length === 0 && figures.every(({ within }) => within);

/** The published cases of a sheet, put through it here and now, worst first. */
export const SheetEvidence = ({ entry }: { readonly entry: SheetEntry }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const results = useMemo(
    () => entry.cases.map((one) => caseResult(entry, one)).sort((a, b) => deviation(b) - deviation(a)),
    [entry],
  );
  const bad = results.filter((result) => !agrees(result)).length;
  const unverified = unverifiedOutputs(entry);
  return (
    <section className="part">
      <h2>{say('sheets.evidence')}</h2>
      {results.length > 0 && (
        <p>
          {bad === 0
            ? say('sheets.evidence.all', { n: results.length })
            : say('sheets.evidence.some', { bad, n: results.length })}
        </p>
      )}
      {unverified.length > 0 && (
        <p>
          {say('sheets.unverified', {
            outputs: unverified.map((name) => say(`sheet.${entry.sheet.id}.outputs.${name}`)).join(', '),
          })}
        </p>
      )}
      <ul>
        {results.map((result) => {
          const off = deviation(result);
          const { relative, absolute = 0 } = result.case.tolerance;
          return (
            <li className="piece" key={result.case.name}>
              <b>{say(agrees(result) ? 'sheets.case.agrees' : 'sheets.case.off')}</b>{' '}
              <span lang="en" data-evidence="">
                {result.case.name}
              </span>{' '}
              <span className="quiet small">
                {say('sheets.case.deviation', {
                  percent: Number.isFinite(off) ? words.percent(off) : say('sheets.case.refused'),
                  tolerance: relative === undefined ? words.number(absolute) : words.percent(relative),
                })}
                {'. '}
                {sourceText(words, result.case.source)}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
};
