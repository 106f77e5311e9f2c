import { memo, type ReactElement } from 'react';
import { tellingDigits } from '../../floor/telling-digits.ts';
import type { UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { SideButton } from '../floors/side-button.tsx';
import { findingQuantity, verdictText } from '../floors/verdict-text.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { barFinding } from './bar-scale.ts';
import { marginText } from './margin-text.ts';
import { ownPlace } from './own-place.ts';
import { sameAnswer } from './same-answer.ts';

export interface UtilitySideProps {
  readonly floor: string;
  readonly floorName: string;
  readonly hue: string;
  readonly name: string;
  readonly finding: UtilityFinding;
  readonly side: 'left' | 'right';
}

/** One answer of one floor: value, bar, verdict with its margin, and what it waits for. Pressed, it shows its working. */
export const UtilitySide = memo(
  ({ floor, floorName, hue, name, finding, side }: UtilitySideProps): ReactElement => {
    const page = usePage();
    const units = usePagePart((state) => state.units);
    const pressed = usePagePart(({ opened }) => opened?.floor === floor && opened.id === finding.id);
    const { words } = page;
    const { say } = words;
    const book = page.state.get().shown;
    const show = { units, book };
    const { have, verdict, said, decides } = finding;
    const value =
      have.value === undefined
        ? (said?.have ?? say('verdict.unknown'))
        : findingQuantity(words, have.value, have.kind, { ...show, digits: tellingDigits(finding) }).text;
    const margin = marginText(words, finding, show);
    const refused = verdict === 'unknown' && finding.refusals.length > 0;
    const told = refused
      ? say('utilities.cannot')
      : [
          // where nothing can be asked yet, what it waits for says enough
          ...(finding.demand.value === undefined && said === undefined
            ? []
            : [verdictText(words, finding, show)]),
          ...(margin === undefined ? [] : [margin]),
        ].join(', ');
    const marked = finding.ifSaid && verdict !== 'unknown' ? say('spine.ifSaid', { verdict: told }) : told;
    return (
      <SideButton
        floor={floor}
        hue={hue}
        finding={barFinding(finding)}
        side={side}
        pressed={pressed}
        label={say('utilities.side', { floor: floorName, name })}
        verdict={verdict}
      >
        <span className="value">
          <b>{value}</b>
          {have.value !== undefined && said?.have !== undefined && (
            <span className="verdict">{said.have}</span>
          )}
          {marked !== '' && <span className={`verdict ${verdict}`}>{marked}</span>}
          {verdict === 'unknown' && !refused && decides !== undefined && book !== undefined && (
            <span className="verdict">
              {say('utilities.waits', { place: ownPlace(words, book, decides) })}
            </span>
          )}
          {verdict !== 'unknown' && have.assumed.length > 0 && (
            <span className="verdict">{say('utilities.assumed')}</span>
          )}
        </span>
      </SideButton>
    );
  },
  (a, b) =>
    a.floor === b.floor &&
    a.floorName === b.floorName &&
    a.hue === b.hue &&
    a.name === b.name &&
    sameAnswer(a.finding, b.finding),
);

UtilitySide.displayName = 'UtilitySide';
