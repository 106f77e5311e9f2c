import type { ReactElement } from 'react';
import type { UtilityFigure, UtilityFinding } from '../../../floor/utilities/utility-finding.ts';
import type { Lift } from '../../../packing/lifts.ts';
import { thingText } from '../../../packing/packing-list.ts';
import { openFigure } from '../../commands/open-working.ts';
import { findingQuantity, verdictText } from '../../floors/verdict-text.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { bookPageAddress } from '../../shell/route.ts';
import { usePage, usePagePart, useWords } from '../../state/page-context.ts';
import { drawnId } from '../../working/opened-figure.ts';
import { useJoins } from '../with-joins.tsx';

/** A press on a figure opens its working beside the page. */
const FigureDoor = ({
  floor,
  id,
  text,
}: {
  readonly floor: string;
  readonly id: string;
  readonly text: string;
}): ReactElement => {
  const page = usePage();
  const pressed = usePagePart(({ opened }) => opened?.floor === floor && opened.id === id);
  return (
    <button
      type="button"
      className="link"
      aria-pressed={pressed}
      data-figure={id}
      onClick={() => openFigure(page, { floor, id })}
    >
      {text}
    </button>
  );
};

/** How one section is lifted and what stands in its way: each figure opens its sheet. */
export const LiftPart = ({ lift, floor }: { readonly lift: Lift; readonly floor: string }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const { book } = useJoins();
  const { section, path, legs, figures, route } = lift;
  const show = { units, book };
  const figureText = ({ figure }: UtilityFigure): string =>
    figure.value === undefined
      ? say('verdict.unknown')
      : findingQuantity(words, figure.value, figure.kind, { ...show, digits: 3 }).text;
  const findings: readonly UtilityFinding[] = [...(legs === undefined ? [] : [legs]), ...route];
  return (
    <section className="open-part lift-part" aria-labelledby={`lift-${path}`} data-section={section.tag}>
      <h3 id={`lift-${path}`}>{say('crates.lift', { section: thingText(book, section.tag) })}</h3>
      {section.sling === undefined && (
        <p className="quiet">
          {say('crates.noSling')} <GoLink to={bookPageAddress(id, path)}>{say('crates.write')}</GoLink>
        </p>
      )}
      {section.lifting !== undefined && <p>{section.lifting}</p>}
      {(section.sling?.gear ?? []).length > 0 && (
        <p className="small">
          {say('crates.gear')} {section.sling?.gear?.join('; ')}
        </p>
      )}
      <dl className="lift-figures">
        {figures.map((one) => (
          <div key={one.id}>
            <dt>{say(`utility.figure.${one.id}`)}</dt>
            <dd>
              <FigureDoor floor={floor} id={drawnId(one)} text={figureText(one)} />
            </dd>
          </div>
        ))}
        {findings.map((finding) => (
          <div key={finding.id} data-verdict={finding.verdict}>
            <dt>{say(`utility.question.${finding.question}`)}</dt>
            <dd className={finding.verdict === 'short' ? 'short' : ''}>
              <FigureDoor floor={floor} id={finding.id} text={verdictText(words, finding, show)} />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
};
