import type { ReactElement } from 'react';
import type { UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { usePage } from '../state/page-context.ts';
import { RefusalList } from '../utilities/refusal-list.tsx';
import type { OpenedFigure } from './opened-figure.ts';

/** Of a finding or figure of a utility: what is held against what, what a sheet refused, and the caution of the trade. */
export const UtilityWords = ({ at }: { readonly at: OpenedFigure }): ReactElement | null => {
  const { words } = usePage();
  const { say } = words;
  const finding = at.finding?.question === undefined ? undefined : (at.finding as UtilityFinding);
  const utility = finding?.utility ?? at.drawn?.utility;
  if (utility === undefined) return null;
  return (
    <div className="utility-words">
      {finding !== undefined && (
        <p className="small quiet">
          {say('utilities.against', {
            asks: say(`utility.asks.${finding.question}`),
            has: say(`utility.has.${finding.question}`),
          })}
        </p>
      )}
      <RefusalList refusals={finding?.refusals ?? at.drawn?.refusals ?? []} />
      {(at.drawn?.notes ?? []).map((note) => (
        <p className="small" key={note.code}>
          {words.note(note)}
        </p>
      ))}
      <p className="small quiet">{say(`utility.caution.${utility}`)}</p>
    </div>
  );
};
