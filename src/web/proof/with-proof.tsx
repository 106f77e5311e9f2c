import { createContext, type ReactElement, type ReactNode, useContext, useMemo } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import {
  type BookProof,
  type CheckSentences,
  checkSentences,
  type FloorProof,
  proofOfRecords,
} from '../../proof/index.ts';
import { useKeptChoice } from '../state/kept-choice.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { checkUnit } from './check-unit.ts';
import { shownFloor } from './shown-floor.ts';
import { useWorkedOut } from './use-worked-out.ts';

/** What the page speaks of: the floor that is chosen, and what its records say of the checks of the book. */
export interface ShownProof {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly proof: BookProof;
  readonly floor: FloorProof;
  /** What is said of its checks, in the words and units of the reader. */
  readonly says: CheckSentences;
  readonly chooseFloor: (tag: string) => void;
  /** Id of the check that the address names. */
  readonly asked: string | undefined;
}

const ProofContext = createContext<ShownProof | undefined>(undefined);

export const useProof = (): ShownProof => {
  const shown = useContext(ProofContext);
  if (shown === undefined) throw new Error('a part of the page stands outside its proof');
  return shown;
};

/** The proof of the open book over the records that are here; the chosen floor stays with this browser. */
export const WithProof = ({
  asked,
  absent,
  coming,
  children,
}: {
  readonly asked: string | undefined;
  readonly absent: ReactNode;
  /** What stands there until it is worked out. */
  readonly coming: ReactNode;
  readonly children: ReactNode;
}): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const [chosen, chooseFloor] = useKeptChoice<string>(page, `proof-floor/${id}`);
  const { book, assessment } = useWorkedOut(chosen) ?? {};
  const units = usePagePart((state) => state.units);
  const words = useWords();
  const { standing, load } = useKeptRecords();
  // what is read in a moment is not judged without first
  const isReading = load === 'loading';
  const proof = useMemo(
    () =>
      book === undefined || assessment === undefined || isReading
        ? undefined
        : proofOfRecords(book, assessment, standing),
    [book, assessment, standing, isReading],
  );
  const says = useMemo(
    () =>
      book === undefined
        ? undefined
        : checkSentences(book, {
            say: words.say,
            has: words.has,
            quantity: (value, kind) =>
              words.quantity(value, kind, { units, book, unit: checkUnit(kind, value) }).text,
            number: (value) => words.number(value, 2),
          }),
    [book, words, units],
  );
  const shown = useMemo((): ShownProof | undefined => {
    if (book === undefined || assessment === undefined || proof === undefined || says === undefined) {
      return undefined;
    }
    const floor = shownFloor(proof.floors, chosen);
    if (floor === undefined) return undefined;
    return {
      book,
      assessment,
      proof,
      floor,
      says,
      chooseFloor,
      asked,
    };
  }, [book, assessment, proof, says, chosen, chooseFloor, asked]);
  if (shown === undefined) return <>{proof === undefined ? coming : absent}</>;
  return <ProofContext value={shown}>{children}</ProofContext>;
};
