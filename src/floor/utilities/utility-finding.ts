import type { Problem } from '../../quantity/problem.ts';
import type { Note } from '../../sheets/frame.ts';
import type { Figure, Finding } from '../finding.ts';

/** What a site provides besides the product. */
export const utilities = ['water', 'air', 'power', 'heat', 'drains', 'building'] as const;
export type Utility = (typeof utilities)[number];

/** A sheet that would not take what the book says: what it said, and where that stands. */
export interface Refusal {
  readonly sheet: string;
  readonly problems: readonly Problem[];
  /** Places of the book whose values went into the refused inputs. */
  readonly places: readonly string[];
}

/** What one utility is asked at one place, against what the floor has. */
export interface UtilityFinding extends Finding {
  /** Which question it is: `airPressure`; the id has the thing behind it: `airPressure AIR-1`. */
  readonly question: string;
  readonly utility: Utility;
  /** Tag of the thing that it is about: an air drop, a drive, a zone, a section. */
  readonly of?: string;
  /** Tag of the tie-in point at which the site has to bring it. */
  readonly tieIn?: string;
  /** How far it is on the good side, SI: what a share of a temperature or of nothing can't say. */
  readonly gap?: number;
  /** What is asked and what is there where they are words: a purity class, an earthing system. */
  readonly said?: { readonly demand?: string; readonly have?: string };
  readonly refusals: readonly Refusal[];
}

/** A finding of the main question or of a utility: what only a utility's has may be absent. */
export type AnyFinding = Finding & Partial<Omit<UtilityFinding, keyof Finding>>;

/** A figure of a utility that nothing is held against: what the line draws, water that condenses in a shift. */
export interface UtilityFigure {
  readonly id: string;
  readonly utility: Utility;
  readonly of?: string;
  readonly figure: Figure;
  /** The answer where it is a word: a size out of a table. */
  readonly said?: string;
  readonly notes: readonly Note[];
  readonly refusals: readonly Refusal[];
}

export interface UtilityAnswers {
  readonly findings: readonly UtilityFinding[];
  readonly figures: readonly UtilityFigure[];
}

export interface UtilityAssessment extends UtilityAnswers {
  /** Those of one utility: where it alone is looked at, no other is worked out. */
  readonly of: (utility: Utility) => UtilityAnswers;
}
