import type { Patch } from '../../book/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { Verdict } from '../finding.ts';
import type { Calculation } from './calculation.ts';
import type { Known } from './known.ts';
import type { Utility } from './utility-finding.ts';

/** What a question comes to on one floor. */
export interface Answer {
  readonly demand?: Known | undefined;
  readonly have?: Known | undefined;
  /** Given where it is not the gap that decides: words against words, a pipe that chokes. */
  readonly verdict?: Verdict | undefined;
  readonly said?: { readonly demand?: string; readonly have?: string };
}

/** One thing of the floor that can be changed, with its steps from the least change to the greatest. */
export interface UtilityLever {
  readonly id: string;
  /** Book place that it turns. */
  readonly path: string;
  readonly kind: Kind;
  /** Made when somebody asks what would carry it. */
  readonly steps: () => readonly {
    readonly patches: readonly Patch[];
    /** The changed value, SI. */
    readonly value: number;
    /** As it would stand in the book, or as people say it. */
    readonly text: string;
  }[];
}

/** A question that a line puts to a floor: what it asks of a utility against what is there. */
export interface Need {
  readonly question: string;
  readonly utility: Utility;
  /** Tag of the thing that it is about. */
  readonly of?: string | undefined;
  readonly tieIn?: string | undefined;
  readonly sense: 'least' | 'most';
  readonly kind: Kind;
  readonly answer: (calculation: Calculation) => Answer;
  /** What may be changed; made only when somebody asks what would carry it. */
  readonly levers?: (calculation: Calculation) => readonly UtilityLever[];
}

/** A figure that nothing is held against. */
export interface Draw {
  readonly id: string;
  readonly utility: Utility;
  readonly of?: string | undefined;
  readonly kind: Kind;
  /** A number, or a word: a size out of a table. */
  readonly answer: (calculation: Calculation) => Known<number | string> | undefined;
}

export const needId = ({ question, of }: Pick<Need, 'question' | 'of'>): string =>
  of === undefined ? question : `${question} ${of}`;
