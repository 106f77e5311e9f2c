import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { GatePart } from './gate-part.tsx';
import { HeadsPart } from './heads-part.tsx';
import { KnownPart } from './known-part.tsx';
import { OwnKeys } from './own-keys.tsx';
import { useKeys } from './use-keys.ts';

/** The gates of the floor in their order, the keys that are signed with, and what the other party keeps. */
export const GatesView = (): ReactElement => {
  const { say } = useWords();
  const { floor } = useProof();
  const keys = useKeys();
  const next = floor.gates.find(({ passed }) => !passed);
  return (
    <div className="gates-view">
      {floor.gates.length === 0 && <p className="quiet">{say('gates.none', { floor: floor.name })}</p>}
      {floor.gates.map((gate) => (
        <GatePart
          key={`${gate.floor} ${gate.gate}`}
          gate={gate}
          keys={keys}
          first={gate.gate === next?.gate}
        />
      ))}
      <p className="small quiet">{say('gates.caution')}</p>
      <section className="open-part" data-part="keys">
        <h3>{say('gates.keys')}</h3>
        <OwnKeys keys={keys} />
        <KnownPart keys={keys} />
      </section>
      <section className="open-part" data-part="heads">
        <h3>{say('gates.heads')}</h3>
        <HeadsPart />
      </section>
    </div>
  );
};
