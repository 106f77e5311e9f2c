import type { ReactElement } from 'react';
import { thingText } from '../../../packing/packing-list.ts';
import type { VisitTool } from '../../../packing/visit-tools.ts';
import { useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';

/** Tools and instruments of the visit, by the joins and checks that need them. */
export const ToolsPart = ({ tools }: { readonly tools: readonly VisitTool[] }): ReactElement => {
  const { say, has } = useWords();
  const { book } = useJoins();
  const nameOf = ({ tool }: VisitTool): string =>
    say(has(`packing.tool.${tool}`) ? `packing.tool.${tool}` : `proof.instrument.${tool}`);
  return (
    <section className="open-part" aria-labelledby="crates-tools">
      <h3 id="crates-tools">{say('crates.tools')}</h3>
      {tools.length === 0 && <p className="quiet">{say('crates.tools.none')}</p>}
      <ul className="visit-tools">
        {tools.map((one) => (
          <li key={one.tool} data-tool={one.tool}>
            <b>{nameOf(one)}</b>{' '}
            {one.own.length > 0 && `${one.own.map((tag) => thingText(book, tag)).join(', ')} `}
            <span className="small quiet">
              {(['checks', 'joins'] as const)
                .filter((of) => one[of].length > 0)
                .map((of) => say(`crates.for.${of}`, { n: one[of].length }))
                .join(', ')}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
};
