import { type ReactElement, useDeferredValue, useId, useMemo, useRef, useState } from 'react';
import { GoLink } from '../../shell/go-link.tsx';
import { papersAddress } from '../../shell/route.ts';
import { useKeptChoice } from '../../state/kept-choice.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { BoxDesk } from '../pictures/box-desk.tsx';
import { StopPictures } from '../pictures/stop-pictures.tsx';
import { stateOf } from '../state-of.ts';
import { useJoins } from '../with-joins.tsx';
import { foundStops, searchText } from './found-stops.ts';
import { StopTable } from './stop-table.tsx';

/** Rows that are laid out at once: as many as one reads, and few enough that every key is answered at once. */
const mostRows = 150;

/** The rebuild in walking order: stage by stage, box by box, with both ends of each join. */
export const OrderView = (): ReactElement => {
  const page = usePage();
  const { say, quantity } = page.words;
  const units = usePagePart((state) => state.units);
  const { book, joins, byTag, schedule, states, ends } = useJoins();
  const id = usePagePart((state) => state.id);
  const field = useId();
  const [wanted, setWanted] = useState('');
  // who works in one box comes back to it
  const [kept, keepBox] = useKeptChoice<string>(page, `joins-box/${id}`);
  const [most, setMost] = useState(mostRows);
  const asked = useDeferredValue(wanted);
  const texts = useMemo(() => new Map(joins.map((join) => [join.tag, searchText(join)])), [joins]);
  const boxes = useMemo(
    () =>
      [
        ...new Set([
          ...schedule.stages.flatMap(({ stops }) => stops.flatMap((stop) => stop.box ?? [])),
          ...ends.keys(),
        ]),
      ].toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })),
    [schedule, ends],
  );
  const box = boxes.find((one) => one === kept) ?? '';
  const desk = useRef<HTMLDivElement>(null);
  const openBox = (tag: string): void => {
    keepBox(tag);
    setMost(mostRows);
    // the key that was pressed is gone once the box is open
    requestAnimationFrame(() => desk.current?.focus());
  };
  const { stops, found } = useMemo(
    () => foundStops(schedule, byTag, texts, { wanted: asked, box: box === '' ? undefined : box, most }),
    [schedule, byTag, texts, asked, box, most],
  );
  const laid = stops.reduce((sum, stop) => sum + stop.joins.length, 0);
  const length = quantity(schedule.distance, 'length', { units, book }).text;
  return (
    <div className="order-view">
      <div className="joins-filter">
        <div className="proof-field">
          <label htmlFor={`${field}t`}>{say('joining.filter')}</label>
          <input
            id={`${field}t`}
            type="search"
            autoComplete="off"
            data-field="filter"
            value={wanted}
            onChange={({ target }) => {
              setWanted(target.value);
              setMost(mostRows);
            }}
          />
        </div>
        <div className="proof-field">
          <label htmlFor={`${field}b`}>{say('joining.filter.box')}</label>
          <select
            id={`${field}b`}
            data-field="box"
            value={box}
            onChange={({ target }) => {
              keepBox(target.value);
              setMost(mostRows);
            }}
          >
            <option value="">{say('joining.filter.all')}</option>
            {boxes.map((tag) => (
              <option key={tag} value={tag}>
                {tag}
              </option>
            ))}
          </select>
        </div>
      </div>
      <p role="status" data-found={found}>
        {say('joining.found', { n: found, of: joins.length })}
      </p>
      <p className="small quiet">
        {schedule.distance === 0
          ? say('joining.way.unknown')
          : say(schedule.inRow ? 'joining.way.row' : 'joining.way', { distance: length })}
      </p>
      {joins.length > 0 && (
        <p>
          <GoLink to={papersAddress(id)}>{say('joining.print')}</GoLink>
        </p>
      )}
      {box === '' && asked.trim() === '' && (
        <ul className="order-sections">
          {schedule.stages
            .filter(({ sections }) => sections.length > 0)
            .map(({ stage, sections }) => (
              <li key={stage}>
                {say('joining.order.sections', {
                  stage: say(`joins.stage.${stage}`),
                  sections: sections.join(', '),
                })}
              </li>
            ))}
        </ul>
      )}
      {box !== '' && (
        <div ref={desk} tabIndex={-1}>
          <BoxDesk key={box} box={box} />
        </div>
      )}
      {stops.map((stop, i) => {
        const stage = stop.stage === undefined ? say('joining.before') : say(`joins.stage.${stop.stage}`);
        const at =
          stop.box === undefined
            ? say('joining.stop.none')
            : say(stop.unplaced ? 'joining.stop.unplaced' : 'joining.stop', { box: stop.box });
        const label = stop.stage === undefined ? stage : say('joining.stop.head', { stage, at });
        const key = `${i} ${stop.stage ?? ''} ${stop.box ?? ''}`;
        return (
          <section className="stop" key={key} data-stage={stop.stage ?? 'before'} data-box={stop.box ?? ''}>
            <h3>{label}</h3>
            {box === '' && stop.stage !== undefined && stop.box !== undefined && (
              <StopPictures box={stop.box} joins={stop.joins} open={() => openBox(stop.box ?? '')} />
            )}
            <StopTable label={label} joins={stop.joins} stateOf={(tag) => stateOf(states, tag)} />
          </section>
        );
      })}
      {found > laid && (
        <p>
          <button type="button" data-act="more" onClick={() => setMost(most + mostRows)}>
            {say('joining.show.more', { n: Math.min(mostRows, found - laid), left: found - laid })}
          </button>
        </p>
      )}
    </div>
  );
};
