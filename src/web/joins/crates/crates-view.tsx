import { type ReactElement, useMemo } from 'react';
import { thingText } from '../../../packing/packing-list.ts';
import { packingOf } from '../../../packing/packing-of.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress, papersAddress } from '../../shell/route.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { CratePart } from './crate-part.tsx';
import { LiftPart } from './lift-part.tsx';
import { ToolsPart } from './tools-part.tsx';

/** What travels to the floor: crates at a glance, each section with its lift and its way in, and what is brought along. */
export const CratesView = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const assessment = usePagePart((state) => state.assessment);
  const { book, floor } = useJoins();
  const { records } = useKeptRecords();
  const packing = useMemo(
    () =>
      assessment === undefined || floor === undefined || !assessment.floors.some((one) => one.floor === floor)
        ? undefined
        : packingOf(book, assessment, floor, records),
    [book, assessment, floor, records],
  );
  if (packing === undefined) return <p className="quiet">{say('page.loading')}</p>;
  const { list, lifts, claims, tools, floor: here } = packing;
  const { carrier, term, place, edition } = book.line?.transport ?? {};
  const names = (tags: readonly string[]): string => tags.map((tag) => thingText(book, tag)).join('; ');
  return (
    <div className="crates-view">
      <p className="joins-caution">
        {say('packing.caution.lift')} {say('packing.caution.papers')}
      </p>
      <p className="open-told" data-told="crates">
        {say('crates.told', {
          n: list.crates.length,
          open: list.crates.filter((one) => one.missing.length > 0).length,
        })}{' '}
        {term === undefined
          ? say('packing.risk.unknown')
          : say('packing.risk', {
              term,
              place: place ?? say('crates.unknown'),
              edition: edition === undefined ? '' : ` (${edition})`,
            })}{' '}
        {carrier !== undefined && say('crates.carrier', { carrier })}{' '}
        <GoLink to={bookPageAddress(id, '/line/transport')}>{say('crates.transport')}</GoLink>
      </p>
      {list.unpacked.length > 0 && (
        <p className="problem" data-told="unpacked">
          {say('packing.unpacked', { things: names(list.unpacked) })}
        </p>
      )}
      {list.twice.length > 0 && (
        <p className="problem">{say('packing.twice', { things: names(list.twice) })}</p>
      )}
      <section className="open-part" aria-labelledby="crates-list">
        <h3 id="crates-list">{say('crates.list')}</h3>
        {list.crates.length === 0 && (
          <p className="quiet">
            {say('crates.none')}{' '}
            <GoLink to={bookPageAddress(id, '/line/crates')}>{say('crates.write')}</GoLink>
          </p>
        )}
        <ul>
          {list.crates.map((one) => (
            <CratePart
              key={one.crate.tag}
              one={one}
              claim={claims.find(({ crate }) => crate === one.crate.tag)}
            />
          ))}
        </ul>
        {list.crates.length > 0 && (
          <p>
            <GoLink to={papersAddress(id)}>{say('crates.paper')}</GoLink>
          </p>
        )}
      </section>
      {lifts.map((lift) => (
        <LiftPart key={lift.section.tag} lift={lift} floor={here.floor} />
      ))}
      <ToolsPart tools={tools} />
    </div>
  );
};
