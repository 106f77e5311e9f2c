import type { ReactElement } from 'react';
import type { Claim } from '../../../packing/claims.ts';
import { type PackedCrate, thingText } from '../../../packing/packing-list.ts';
import { massesTogetherSheet } from '../../../sheets/building/masses-together.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress, proofAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { workingAddress } from '../../working/working-address.ts';
import { useJoins } from '../with-joins.tsx';

/** The sentence of a claim; without the days of the contract there is none to be said. */
const useClaimText = (): ((claim: Claim | undefined) => string) => {
  const { say } = useWords();
  const { book } = useJoins();
  const days = book.line?.transport?.claimDays;
  return (claim) => {
    if (days === undefined) return say('packing.claim.unknown');
    if (claim?.last === undefined) return say('packing.claim.days', { days });
    const parts = { day: claim.last, received: claim.received ?? '', days };
    return say(claim.planned ? 'packing.claim.planned' : 'packing.claim', parts);
  };
};

/** One crate at a glance: size, mass against what is in it, claim, and what its papers still want. */
export const CratePart = ({
  one,
  claim,
}: {
  readonly one: PackedCrate;
  readonly claim: Claim | undefined;
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { book } = useJoins();
  const claimText = useClaimText();
  const { crate, path, added, agrees, missing } = one;
  const size = [crate.length, crate.width, crate.height].map((each) =>
    each === undefined ? say('crates.unknown') : words.entryText(each),
  );
  const { holds = [], items = [], contents = [], dangerous = [] } = crate;
  const inside = [
    ...holds.map((tag) => thingText(book, tag)),
    ...items.flatMap(({ what, describes }) => (describes === undefined && what !== undefined ? [what] : [])),
    ...contents,
  ];
  return (
    <li className="crate-part" data-crate={crate.tag} data-missing={missing.length}>
      <h4>
        <GoLink to={bookPageAddress(id, path)}>{thingText(book, crate.tag)}</GoLink>
      </h4>
      <p>
        {crate.mass === undefined ? say('crates.unknown') : words.entryText(crate.mass)}, {size.join(' × ')}
        {added !== undefined && (
          <span className={agrees === false ? 'short' : 'quiet'}>
            {' '}
            {say('packing.added')}:{' '}
            <GoLink to={workingAddress(words, added.working, massesTogetherSheet.inputs)}>
              {words.quantity(added.value, 'mass', { units, book }).text}
            </GoLink>
          </span>
        )}
      </p>
      <p className="small">{inside.join('; ')}</p>
      {dangerous.length > 0 && (
        <p className="small">
          <b>{say('crates.dangerous')}</b>{' '}
          {dangerous
            .map(({ un, name, class: group }) =>
              [un, name, group].filter((part) => part !== undefined).join(', '),
            )
            .join('; ')}
        </p>
      )}
      <p className="small">
        {claimText(claim)}{' '}
        <GoLink to={proofAddress(id, 'run', `crateReceipt ${crate.tag}`)}>{say('crates.receipt')}</GoLink>
      </p>
      {missing.length > 0 && (
        <p className="problem small">
          {say('crates.missing')}{' '}
          {missing.map((place) => (
            <GoLink key={place} to={bookPageAddress(id, place.replace(/\/[^/]+$/, ''))}>
              {words.placeName(book, place)}
            </GoLink>
          ))}
        </p>
      )}
    </li>
  );
};
