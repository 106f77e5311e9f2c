import { type ReactElement, useEffect, useRef, useState } from 'react';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { PunchForm } from './punch-form.tsx';
import { keepsOf, punchKeeps } from './punch-keeps.ts';
import { PunchRow } from './punch-row.tsx';

/** What is not as it must be, by what it keeps from being done; what was put right stands behind it. */
export const PunchPart = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const book = usePagePart((state) => state.id);
  const { proof, floor } = useProof();
  // what is being typed was kept: the form is open again after a reload
  const [adding, setAdding] = useState(() => page.notes.read(`punch/${book}/`) !== undefined);
  const [told, setTold] = useState('');
  const part = useRef<HTMLElement>(null);
  const pressed = useRef(false);
  useEffect(() => {
    if (adding && pressed.current) part.current?.querySelector<HTMLElement>('.punch-add textarea')?.focus();
  }, [adding]);
  const here = proof.punch.filter(
    (point) => point.floor === undefined || point.floor === floor.floor || floor.role !== 'built on',
  );
  const open = here.filter(({ state }) => state === 'open');
  const closed = here.filter(({ state }) => state === 'closed');
  return (
    <section className="open-part" data-part="punch" ref={part}>
      <h3>{say('open.punch')}</h3>
      {open.length === 0 && <p className="quiet">{say('open.punch.none')}</p>}
      {punchKeeps.map(({ keeps }) => {
        const own = open.filter((point) => keepsOf(point) === keeps);
        if (own.length === 0) return null;
        return (
          <div key={keeps} className="punch-group" data-keeps={keeps}>
            <h4>{say(`open.group.${keeps}`, { n: own.length })}</h4>
            <ul>
              {own.map((point) => (
                <PunchRow key={point.point} point={point} told={setTold} />
              ))}
            </ul>
          </div>
        );
      })}
      <div className="punch-add">
        {adding ? (
          <PunchForm
            done={(text) => {
              setAdding(false);
              setTold(text);
              requestAnimationFrame(() =>
                part.current?.querySelector<HTMLElement>('[data-act="add-point"]')?.focus(),
              );
            }}
          />
        ) : (
          <button
            type="button"
            data-act="add-point"
            onClick={() => {
              pressed.current = true;
              setAdding(true);
            }}
          >
            {say('open.punch.add')}
          </button>
        )}
      </div>
      <p role="status">{told}</p>
      {closed.length > 0 && (
        <details>
          <summary>{say('open.punch.right', { n: closed.length })}</summary>
          <ul>
            {closed.map((point) => (
              <PunchRow key={point.point} point={point} told={setTold} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};
