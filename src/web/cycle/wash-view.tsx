import { type ReactElement, useMemo, useState } from 'react';
import { valueAt } from '../../book/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, sheetAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { ContactBar } from './contact-bar.tsx';
import { NumberField } from './number-field.tsx';
import { FacingHeads, FacingRow } from './side-grid.tsx';
import { useNames } from './use-names.ts';
import { type SideShifts, useAnswers, useShifts } from './with-shifts.tsx';

/** Shifts that show the least and the most of a contact: each has thousands of bottles. */
const washShifts = 40;
/** s; what no washer does */
const [leastIndex, mostIndex] = [1, 600] as const;

/** Whether the bottles still get their contact, at today's index and at another. */
export const WashView = (): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const nameOf = useNames();
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { book, sides, choice, working } = useShifts();
  const [text, setText] = useState('');
  const index = words.readNumber(text);
  const taken = index !== undefined && index >= leastIndex && index <= mostIndex ? index : undefined;
  const tags = sides.map(({ floor }) => floor.floor).join('\n');
  const format = sides[0]?.floor.format;
  const questions = useMemo(
    () =>
      taken === undefined
        ? undefined
        : tags.split('\n').map((floor) => ({
            of: 'shifts' as const,
            book,
            floor,
            ...(format === undefined || format === '' ? {} : { format }),
            seed: choice.seed,
            shifts: washShifts,
            index: taken,
          })),
    [book, tags, format, choice.seed, taken],
  );
  const sped = useAnswers(questions);
  const contactsOf = ({ floor, answer }: SideShifts) => {
    const other = sped.answers[floor.floor];
    return {
      now: answer?.figures?.contacts ?? [],
      fast: other === undefined || other === 'failed' ? [] : (other.figures?.contacts ?? []),
      washer: answer?.ground.line?.washer,
    };
  };
  const judgedOf = (side: SideShifts, zone: string) =>
    side.answer?.washing?.zones.find((one) => one.zone === zone);
  const zones = [...new Set(sides.flatMap((side) => contactsOf(side).now.map(({ zone }) => zone)))];
  const stations = book.line?.stations ?? [];
  const washerAt = stations.findIndex(({ kind }) => kind === 'washer');
  const zonePath = (tag: string): string => {
    const station = stations[washerAt];
    const place = station?.kind === 'washer' ? (station.zones ?? []).findIndex((one) => one.tag === tag) : -1;
    return `/line/stations/${washerAt}/zones/${place}`;
  };
  const seconds = (n: number): string => say('cycle.seconds', { n: number(n, 3) });
  const longest = Math.max(
    1,
    ...sides.flatMap((side) => {
      const { now, fast } = contactsOf(side);
      return [...now, ...fast].flatMap(({ zone, mean, most }) => [
        // one bottle that stood through a long stop would press all others together
        Math.min(most, 2.5 * mean),
        judgedOf(side, zone)?.need ?? 0,
      ]);
    }),
  );
  const spedWorks =
    taken !== undefined &&
    !sped.stopped &&
    sides.some(({ floor }) => {
      const one = sped.answers[floor.floor];
      return one === undefined || (one !== 'failed' && !one.done);
    });
  return (
    <div className="spine cycle-answer" data-working={working || spedWorks}>
      <div className="wash-index">
        <NumberField
          name="index"
          label={say('cycle.wash.index')}
          text={text}
          type={setText}
          problem={
            text.trim() === '' || taken !== undefined
              ? undefined
              : say('cycle.wash.index.wrong', { least: leastIndex, most: mostIndex })
          }
        />
        <span className="small quiet">{say('cycle.wash.index.about')}</span>
      </div>
      <FacingHeads
        middle={say('cycle.wash.unit')}
        of={(side) => {
          const { washer } = contactsOf(side);
          const cycle = side.answer?.ground.period;
          if (washer === undefined) return <p className="quiet">{say('cycle.wait')}</p>;
          return (
            <p className="small">
              {say('cycle.wash.own', { own: seconds(washer.stroke + washer.dwell) })}
              {cycle !== undefined && ` ${say('cycle.wash.cycle', { cycle: seconds(cycle) })}`}
            </p>
          );
        }}
      />
      {sides.map((side) => {
        const cycle = side.answer?.ground.period;
        const { washer } = contactsOf(side);
        if (taken === undefined || cycle === undefined || washer === undefined) return null;
        // held both at its own index and at the other: what is beside the washer decides
        if (Math.max(taken, washer.stroke + washer.dwell) >= cycle) return null;
        return (
          <p key={side.floor.floor} className="small" data-same={side.floor.floor}>
            {say('cycle.wash.same', { floor: side.floor.name, cycle: seconds(cycle) })}
          </p>
        );
      })}
      {zones.length === 0 && !working && <p>{say('cycle.wash.none')}</p>}
      <ul className="rows">
        {zones.map((zone) => {
          const rows =
            sides.flatMap((side) => contactsOf(side).now).find((one) => one.zone === zone)?.rows ?? 1;
          const judged = sides.map((side) => judgedOf(side, zone)).find((one) => one !== undefined);
          const need = judged?.need;
          return (
            <FacingRow
              key={zone}
              row={zone}
              said={nameOf(zone)}
              name={
                <>
                  {nameOf(zone)}
                  <span className="small quiet">{say('cycle.wash.rows', { n: rows })}</span>
                  <span className="small">
                    {judged?.verdict === 'not asked' ? (
                      say('cycle.wash.notAsked')
                    ) : need === undefined ? (
                      <GoLink to={bookPageAddress(id, zonePath(zone))}>{say('cycle.wash.needless')}</GoLink>
                    ) : (
                      say('cycle.wash.need', { seconds: seconds(need) })
                    )}
                  </span>
                </>
              }
              of={(side, at) => {
                const { now, fast, washer } = contactsOf(side);
                const contact = now.find((one) => one.zone === zone);
                const other = fast.find((one) => one.zone === zone);
                if (contact === undefined || washer === undefined)
                  return <span className="value quiet">{say('cycle.wait')}</span>;
                const share = Number(valueAt(book, `${zonePath(zone)}/sprayFraction`)) || 1;
                const verdict = (least: number): string =>
                  need === undefined
                    ? ''
                    : least >= need
                      ? say('cycle.wash.reaches')
                      : say('cycle.wash.short', { seconds: seconds(need - least) });
                const value = (
                  <span className="value">
                    <GoLink
                      to={sheetAddress('hygiene/contact-share', {
                        stations: String(contact.rows),
                        index: `${washer.stroke + washer.dwell} s`,
                        share: String(share),
                        ...(need === undefined ? {} : { required: `${need} s` }),
                      })}
                    >
                      <b>{say('cycle.wash.least', { seconds: seconds(contact.least) })}</b>
                    </GoLink>
                    <span className="small quiet">
                      {say('cycle.wash.rest', { mean: seconds(contact.mean), most: seconds(contact.most) })}
                    </span>
                    <span className="small">{verdict(contact.least)}</span>
                    {other !== undefined && taken !== undefined && (
                      <span className="small sped" data-sped={zone}>
                        {say('cycle.wash.sped', { index: seconds(taken), seconds: seconds(other.least) })}{' '}
                        {verdict(other.least)}
                      </span>
                    )}
                  </span>
                );
                const bar = (
                  <ContactBar contact={contact} sped={other} need={need} longest={longest} side={at} />
                );
                return at === 'left' ? (
                  <>
                    {value}
                    {bar}
                  </>
                ) : (
                  <>
                    {bar}
                    {value}
                  </>
                );
              }}
            />
          );
        })}
      </ul>
      <ul>
        {sides.map(({ floor, answer }) => {
          const residue = answer?.washing?.residue;
          return (
            residue !== undefined && (
              <li key={floor.floor} className="small">
                {say('cycle.wash.residue', {
                  floor: floor.name,
                  residue: words.quantity(residue.value, 'massConcentration', { units, book, digits: 2 })
                    .text,
                })}
              </li>
            )
          );
        })}
      </ul>
      <p className="small quiet">{say('cycle.wash.key')}</p>
      <p className="small quiet">{say('cycle.wash.caution')}</p>
    </div>
  );
};
