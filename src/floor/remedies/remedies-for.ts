import { type Book, patchBook, tryPatches } from '../../book/index.ts';
import type { Finding, Remedy } from '../assessment.ts';
import { bookReader } from '../book-reader.ts';
import { wantsHour } from '../finding-specs.ts';
import { type Judgement, judgeFloor } from '../judge-floor.ts';
import type { Candidate, Lever, LeverMaker, Situation } from './lever.ts';
import { closing, closingHeads, laneKv, nozzleBore, presets, washerDwell } from './line-levers.ts';
import {
  boosterPump,
  bore,
  makeUp,
  pieceKv,
  pumpFrequency,
  regulator,
  staticPressure,
  surface,
  tankArea,
  tankVolume,
} from './supply-levers.ts';

const makers: Readonly<Record<string, LeverMaker>> = {
  surface,
  staticPressure,
  regulator,
  pumpFrequency,
  bore,
  pieceKv,
  laneKv,
  boosterPump,
  makeUp,
  tankArea,
  tankVolume,
  presets,
  nozzleBore,
  closing,
  washerDwell,
  closingHeads,
};

export interface RemedyQuestion {
  /** Tag of the floor. */
  readonly floor: string;
  /** Id of the finding. */
  readonly finding: string;
  readonly format?: string;
}

interface Tried {
  readonly candidate: Candidate;
  readonly finding: Finding;
}

/** Candidates that are looked at coarsely where the greatest one does not carry: a lever may help and then harm. */
const looks = 6;

const search = (
  lever: Lever,
  tryStep: (step: number) => Tried | undefined,
): Pick<Remedy, 'patch'> & Partial<Remedy> => {
  const carries = (step: number): boolean => tryStep(step)?.finding.verdict === 'carries';
  let high = lever.steps - 1;
  if (!carries(high)) {
    high = -1;
    for (let look = 0; look < looks && high < 0; look++) {
      const step = Math.floor((look * (lever.steps - 1)) / looks);
      if (carries(step)) high = step;
    }
    if (high < 0) return { patch: [] };
  }
  let low = -1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (carries(middle)) high = middle;
    else low = middle;
  }
  const found = tryStep(high)!;
  const smaller = low < 0 ? undefined : tryStep(low);
  return {
    patch: found.candidate.patches.map(({ path, value }) => ({ path, value })),
    answer: { kind: lever.kind, value: found.candidate.value, text: found.candidate.text },
    ...(found.finding.margin === undefined ? {} : { margin: found.finding.margin }),
    ...(smaller === undefined
      ? {}
      : {
          nextSmaller: {
            text: smaller.candidate.text,
            ...(smaller.finding.margin === undefined ? {} : { margin: smaller.finding.margin }),
          },
        }),
  };
};

/**
 * What would carry a finding: for each lever the least patch of the book with which it carries.
 *
 * Method   a lever's steps run from the least change to the greatest; the book is patched, judged by the very assessment
 *          that found the shortage, and the least step that carries is found by halves, so that the one before it is known
 *          to fail
 * Returns  one remedy a lever of the floor; without a patch where no step of the lever carries
 * Problems none: a floor or finding that is not there, or that carries already, has no remedies
 * Assumes  a lever that carries at a step carries at the greater ones up to where it was found
 * Cost     about nine judgements a lever
 */
export const remediesFor = (book: Book, question: RemedyQuestion): readonly Remedy[] => [
  ...eachRemedy(book, question),
];

/** The same one by one, for a page that shows each when it is found and may stop. */
export function* eachRemedy(book: Book, question: RemedyQuestion): Generator<Remedy> {
  const floor = (book.floors ?? []).findIndex((each) => each.tag === question.floor);
  if (floor < 0) return;
  const now = judgeFloor(bookReader(book), floor, question.format);
  const finding = now.findings.find((each) => each.id === question.finding);
  if (finding === undefined || finding.verdict === 'carries') return;
  if (finding.have.value === undefined || finding.demand.value === undefined) return;
  const situation: Situation = {
    book,
    floor,
    floorPath: `/floors/${floor}`,
    inputs: now.inputs,
    solution: now.solution,
  };
  const noHour = !wantsHour(question.finding);
  const judge = (candidate: Candidate): Judgement =>
    judgeFloor(bookReader(tryPatches(book, candidate.patches)), floor, question.format, { noHour });
  // a remedy that the book itself would refuse is none
  const whole = (patch: Remedy['patch']): boolean => patch.length === 0 || patchBook(book, patch).ok;
  for (const id of finding.levers) {
    for (const lever of makers[id]?.(situation) ?? []) {
      const tried = new Map<number, Tried | undefined>();
      const tryStep = (step: number): Tried | undefined => {
        if (!tried.has(step)) {
          const candidate = lever.candidate(step);
          const after = judge(candidate).findings.find((each) => each.id === question.finding);
          tried.set(step, after === undefined ? undefined : { candidate, finding: after });
        }
        return tried.get(step);
      };
      const found = search(lever, tryStep);
      yield {
        lever: lever.id,
        path: lever.path,
        finding: question.finding,
        floor: question.floor,
        ...(whole(found.patch) ? found : { patch: [] }),
      };
    }
  }
}
