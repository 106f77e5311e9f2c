import { type ReactElement, useMemo } from 'react';
import { GoLink } from '../../shell/go-link.tsx';
import { joinsAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { StateShape } from '../state-shape.tsx';
import { useJoins } from '../with-joins.tsx';
import { BoxPart } from './box-part.tsx';
import { heldStates, type SectionStates, statesOfAll, statesOfSections } from './counted-states.ts';
import { StateStrip } from './state-strip.tsx';

const Counts = ({ counts }: SectionStates): ReactElement => {
  const { say, number } = useWords();
  return (
    <ul className="state-counts">
      {heldStates(counts).map((state) => (
        <li key={state} data-state={state}>
          <StateShape state={state} /> <b>{number(counts[state])}</b> {say(`joins.state.${state}`)}
        </li>
      ))}
    </ul>
  );
};

/** What hangs loose on each section, and what keeps each box from being energised, by the records there are. */
export const LooseView = (): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const { joins, states, schedule, boxes, book, byTag } = useJoins();
  const { rebuilt, before, sections } = useMemo(() => {
    const early = new Set(schedule.beforeShipping);
    const own = joins.filter(({ tag }) => !early.has(tag));
    return {
      rebuilt: statesOfAll(own, states),
      before: statesOfAll(
        schedule.beforeShipping.flatMap((tag) => byTag.get(tag) ?? []),
        states,
      ),
      sections: statesOfSections(own, states),
    };
  }, [joins, states, schedule, byTag]);
  const nameOf = (tag: string): string | undefined =>
    book.line?.sections?.find((section) => section.tag === tag)?.name;
  if (joins.length === 0)
    return (
      <p className="message">
        {say('joining.none')} <GoLink to={joinsAddress(id, 'faults')}>{say('joining.none.list')}</GoLink>
      </p>
    );
  const wanting = boxes.filter(({ lacks }) => lacks.length > 0);
  return (
    <div className="loose-view">
      <p className="joins-caution">{say('joins.caution')}</p>
      <p className="open-told" data-told="loose">
        {say('joining.loose.told', {
          n: rebuilt.total,
          tested: rebuilt.counts.tested,
          loose: rebuilt.counts.none + rebuilt.counts.parted,
          trouble: rebuilt.counts.trouble + rebuilt.counts.conflict,
        })}{' '}
        {boxes.length > 0 && say('joining.boxes.told', { n: wanting.length, of: boxes.length })}
      </p>
      <section className="open-part" aria-labelledby="loose-boxes">
        <h3 id="loose-boxes">{say('joining.boxes')}</h3>
        {boxes.length === 0 && <p className="quiet">{say('joining.boxes.none')}</p>}
        <ul>
          {boxes.map((one) => (
            <BoxPart key={one.box ?? ''} {...one} />
          ))}
        </ul>
      </section>
      <section className="open-part" aria-labelledby="loose-sections">
        <h3 id="loose-sections">{say('joining.sections')}</h3>
        <ul>
          {sections.map((one) => (
            <li className="section-states" key={one.section ?? ''} data-section={one.section ?? ''}>
              <h4>
                {one.section ?? say('joining.section.none')}
                {one.section !== undefined && <span className="quiet"> {nameOf(one.section)}</span>}
              </h4>
              <StateStrip {...one} />
              <Counts {...one} />
            </li>
          ))}
        </ul>
        <p className="small quiet">{say('joining.sections.both')}</p>
      </section>
      {before.total > 0 && (
        <section className="open-part" aria-labelledby="loose-before">
          <h3 id="loose-before">{say('joining.before')}</h3>
          <Counts {...before} />
        </section>
      )}
    </div>
  );
};
