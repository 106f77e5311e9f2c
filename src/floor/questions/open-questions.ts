import { bookUnits } from '../../book/book-units.ts';
import { type Book, kindAt, valueAt } from '../../book/index.ts';
import { placeAt } from '../../book/place-at.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import type { Assessment, FloorAssessment } from '../assessment.ts';
import { unsaidPipes } from '../fill/unsaid-pipes.ts';
import type { Figure } from '../finding.ts';
import type { AnyFinding, Refusal, Utility } from '../utilities/utility-finding.ts';
import { answerablePlaces, type Takes, takenAt } from './answerable-places.ts';
import type { FloorQuestion } from './floor-question.ts';
import { placesBehind, type Waits } from './places-behind.ts';

/** Who can answer: the people of the floor, or whoever builds the line. */
export type Answerer = 'site' | 'builder';

/** A place of the book whose answer is open, with what waits for it. The words of the question are made at the edge. */
export interface OpenQuestion extends Omit<FloorQuestion, 'text'> {
  readonly who: Answerer;
  /** Why it is asked; of several reasons the one that weighs most. */
  readonly why: Waits | 'assumed';
  readonly takes: Takes;
  /** Ids of the findings that wait for it, or that its assumption widens. */
  readonly findings: readonly string[];
  /** Ids of the figures beside the findings that are not known without it. */
  readonly figures: readonly string[];
  /** Greatest share of the width of an answer that goes when this is sure, 0 to 1; for what was only assumed. */
  readonly share: number;
  /** The utility whose finding waits for it first; absent where it is the line and its product. */
  readonly utility?: Utility;
}

interface Gathered {
  settles: number;
  share: number;
  readonly why: Set<OpenQuestion['why']>;
  readonly findings: Set<string>;
  readonly figures: Set<string>;
  utility?: Utility | undefined;
}

/** The heaviest reason first. */
const reasons = ['missing', 'refused', 'unsure', 'assumed'] as const;

const gathering = () => {
  const places = new Map<string, Gathered>();
  const at = (path: string, why: OpenQuestion['why'], utility: Utility | undefined): Gathered => {
    let found = places.get(path);
    if (found === undefined) {
      found = { settles: 0, share: 0, why: new Set(), findings: new Set(), figures: new Set() };
      places.set(path, found);
    }
    found.why.add(why);
    found.utility ??= utility;
    return found;
  };
  return { places, at };
};

/** Figures of a floor beside its findings, each with the name by which it is asked for. */
const figuresOf = ({ figures, utilities }: FloorAssessment) => [
  ...Object.values(figures).map((figure) => ({
    id: figure.id,
    figure,
    utility: undefined,
    refusals: [] as readonly Refusal[],
  })),
  ...utilities.figures.map(({ id, of, figure, utility, refusals }) => ({
    id: of === undefined ? id : `${id} ${of}`,
    figure,
    utility,
    refusals,
  })),
];

/** The unit in which a place is written, else that in which the book wants to be read. */
const unitAt = (book: Book, path: string): string | undefined => {
  const kind = kindAt(path);
  if (kind === undefined) return undefined;
  const given = valueAt(book, path);
  const read = given === undefined ? undefined : readEntry(given, kind, { path });
  if (read?.ok) return read.value.unit;
  const { byKind, small } = bookUnits(book, undefined);
  return kind === 'length' && path.endsWith('/bore') ? small : byKind[kind];
};

/**
 * Every open question of a floor, those first whose answer settles most.
 *
 * Method   settles   the sum, over the findings that are not decided, of 1/n where the place is one of n that are
 *                    missing or refused, and of the share of the width that goes with it where nothing is missing: a
 *                    place that alone decides a finding counts 1
 *          share     of what was only assumed: the greatest share of any answer's width that the assumption makes
 *          order     by settles, then by share, then what is missing before what was assumed, then by path
 * Symbols  assessment  of the book;  floorTag  one of its floors
 * Returns  each place once; empty for a floor that the assessment has not
 * Cost     O(findings of the floor times their places)
 */
export const openQuestions = (
  book: Book,
  assessment: Assessment,
  floorTag: string,
): readonly OpenQuestion[] => {
  const floor = assessment.floors.find((one) => one.floor === floorTag);
  if (floor === undefined) return [];
  const number = (book.floors ?? []).findIndex(({ tag }) => tag === floorTag);
  const floorPath = `/floors/${number}/`;
  const { places, at } = gathering();
  const findings: readonly AnyFinding[] = [...floor.findings, ...floor.utilities.findings];
  const assumed = (figure: Figure, utility: Utility | undefined): void => {
    for (const path of figure.assumed) {
      for (const each of answerablePlaces(book, path)) at(each, 'assumed', utility);
    }
  };
  for (const finding of findings) {
    const { id, utility } = finding;
    for (const { path, waits, part } of placesBehind(finding)) {
      const asked = answerablePlaces(book, path);
      for (const each of asked) {
        const place = at(each, waits, utility);
        place.settles += part / asked.length;
        place.findings.add(id);
      }
    }
    for (const { path, doubt, share } of finding.causes) {
      if (doubt !== 'assumed') continue;
      const place = at(path, 'assumed', utility);
      place.share = Math.max(place.share, share);
      place.findings.add(id);
    }
    assumed(finding.have, utility);
    assumed(finding.demand, utility);
  }
  for (const { id, figure, utility, refusals } of figuresOf(floor)) {
    const missing = figure.missing.map((path) => [path, 'missing'] as const);
    const refused = refusals.flatMap((each) => each.places.map((path) => [path, 'refused'] as const));
    for (const [path, why] of [...missing, ...refused]) {
      // the tank of a town main is not asked for, nor the inside of a thing before it is known what it is
      if (placeAt(book, path) === undefined) continue;
      for (const each of answerablePlaces(book, path)) at(each, why, utility).figures.add(id);
    }
    assumed(figure, utility);
  }
  // no finding hangs on it: what trials foretell does, and they are no part of an assessment
  for (const pipe of unsaidPipes(book, number)) at(`${pipe}/material`, 'assumed', undefined);
  return [...places]
    .map(([path, { settles, share, why, findings: waiting, figures, utility }]): OpenQuestion => {
      const kind = kindAt(path);
      const unit = unitAt(book, path);
      return {
        path,
        who: path.startsWith(floorPath) || path.startsWith('/agreement/') ? 'site' : 'builder',
        why: reasons.find((reason) => why.has(reason)) ?? 'missing',
        ...takenAt(book, path),
        settles,
        share,
        findings: [...waiting],
        figures: [...figures],
        ...(kind === undefined ? {} : { kind }),
        ...(unit === undefined ? {} : { unit }),
        ...(utility === undefined ? {} : { utility }),
      };
    })
    .sort(
      (a, b) =>
        b.settles - a.settles ||
        b.share - a.share ||
        Number(a.why === 'assumed') - Number(b.why === 'assumed') ||
        (a.path < b.path ? -1 : 1),
    );
};
