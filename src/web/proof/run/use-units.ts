import { useState } from 'react';
import { defaultUnit, type Kind, unitsOf } from '../../../quantity/index.ts';
import { keptTexts } from '../../state/kept-texts.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { unitFor } from '../../words/unit-choice.ts';
import { checkUnit } from '../check-unit.ts';
import { useProof } from '../with-proof.tsx';

const note = 'proof-units';

/** The units of the instruments that are read here, by kind; they stay with this browser. */
export const useUnits = (): {
  readonly unitOf: (kind: Kind, near?: number) => string;
  readonly choose: (kind: Kind, unit: string) => void;
} => {
  const page = usePage();
  const units = usePagePart((state) => state.units);
  const { book } = useProof();
  const [kept, setKept] = useState(() => keptTexts(page.notes.read(note)));
  return {
    unitOf: (kind, near = 1) => {
      const own = kept[kind];
      if (own !== undefined && unitsOf(kind).some(({ id }) => id === own)) return own;
      const names = (book.about?.units ?? {}) as Readonly<Record<string, string>>;
      const usual = checkUnit(kind, near) ?? unitFor(kind, near, units, names, book.about?.system);
      return usual ?? defaultUnit(kind, book.about?.system === 'us' ? 'us' : 'metric');
    },
    choose: (kind, unit) => {
      const next = { ...kept, [kind]: unit };
      page.notes.write(note, next);
      setKept(next);
    },
  };
};
