import { type Book, patchBook } from '../../book/index.ts';
import type { Finding, Remedy, RemedyChange } from '../assessment.ts';
import { bookReader } from '../book-reader.ts';
import { wantsHour } from '../finding-specs.ts';
import { judgeFloor } from '../judge-floor.ts';
import { allFindings, harmsOf } from './harms.ts';
import type { Candidate, Lever, LeverMaker, Situation } from './lever.ts';
import { closing, closingHeads, laneKv, nozzleBore, presets, washerDwell } from './line-levers.ts';
import { type SearchGround, searchGround } from './search-ground.ts';
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
import { eachUtilityRemedy } from './utility-remedies.ts';

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

/** One lever with the steps of it that have been tried. */
interface TriedLever {
  readonly lever: Lever;
  readonly tryStep: (step: number) => Tried;
}

/** Steps that are looked at coarsely where the greatest one does not carry: a lever may help and then harm. */
const looks = 6;
/** Levers that are tried in pairs where none carries alone: those that help most. */
const paired = 4;

const carries = (tried: Tried): boolean => tried.finding.verdict === 'carries';

/** Least step that carries, the one before it failing; -1 where none does. */
const leastStep = (steps: number, carriesAt: (step: number) => boolean): number => {
  let high = steps - 1;
  if (!carriesAt(high)) {
    high = -1;
    for (let look = 0; look < looks && high < 0; look++) {
      const step = Math.floor((look * (steps - 1)) / looks);
      if (carriesAt(step)) high = step;
    }
    if (high < 0) return -1;
  }
  let low = -1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (carriesAt(middle)) high = middle;
    else low = middle;
  }
  return high;
};

const changeOf = ({ lever }: TriedLever, { value, text }: Candidate): RemedyChange => ({
  lever: lever.id,
  path: lever.path,
  kind: lever.kind,
  value,
  text,
});

/**
 * What would carry a finding: for each lever the least patch of the book with which it carries, and what that breaks.
 *
 * Method   a lever's steps run from the least change to the greatest; the book is patched, judged by the very assessment
 *          that found the shortage, and the least step that carries is found by halves, so that the one before it is known
 *          to fail. Where no lever carries alone, each of those that help most is tried with every other: both are turned by the same
 *          share of their ways until they carry, then each is turned back as far as it goes. Then every finding of every
 *          floor is judged with the patch
 * Returns  one remedy a lever of the floor; without a patch where no step of the lever carries
 * Problems none: a floor or finding that is not there, or that carries already, has no remedies
 * Assumes  a lever that carries at a step carries at the greater ones up to where it was found
 * Cost     about nine judgements a lever, and one of all floors for each that carries
 */
export const remediesFor = (
  book: Book,
  question: RemedyQuestion,
  ground?: SearchGround,
): readonly Remedy[] => [...eachRemedy(book, question, ground)];

/** The same one by one, for a page that shows each when it is found and may stop. */
export function* eachRemedy(
  book: Book,
  question: RemedyQuestion,
  ground: SearchGround = searchGround(book, question.format),
): Generator<Remedy> {
  const tags = (book.floors ?? []).map((each) => each.tag);
  const floor = tags.indexOf(question.floor);
  if (floor < 0) return;
  const reader = bookReader(book, ground.read());
  const now = judgeFloor(reader, floor, question.format);
  const finding = now.findings.find((each) => each.id === question.finding);
  if (finding === undefined) {
    const { format } = question;
    yield* eachUtilityRemedy(
      book,
      { floor, finding: question.finding, ...(format === undefined ? {} : { format }) },
      ground,
    );
    return;
  }
  if (finding.verdict === 'carries') return;
  if (finding.have.value === undefined || finding.demand.value === undefined) return;
  const situation: Situation = {
    book,
    floor,
    floorPath: `/floors/${floor}`,
    inputs: now.inputs,
    solution: now.solution,
  };
  const noHour = !wantsHour(question.finding);
  const findingAfter = (patches: Candidate['patches']): Finding =>
    ground.after({ floor, patches, noHour }, reader.soFar)(question.finding) ?? finding;
  const remedy = (
    about: { readonly lever: string; readonly path: string },
    changes: readonly RemedyChange[],
    patches: Candidate['patches'],
    after: Finding,
    nextSmaller?: Remedy['nextSmaller'],
  ): Remedy => {
    const patched = patchBook(book, patches);
    const none = {
      ...about,
      finding: question.finding,
      floor: question.floor,
      patch: [],
      changes: [],
      breaks: [],
    };
    // a remedy that the book itself would refuse is none
    if (changes.length === 0 || !patched.ok) return none;
    const all = ground.all();
    return {
      ...none,
      changes,
      patch: patches.map(({ path, value }) => ({ path, value })),
      breaks: harmsOf(all, allFindings(patched.value, question.format, all)),
      ...(after.margin === undefined ? {} : { margin: after.margin }),
      ...(nextSmaller === undefined ? {} : { nextSmaller }),
    };
  };

  const levers: TriedLever[] = finding.levers
    .flatMap((id) => makers[id]?.(situation) ?? [])
    .map((lever) => {
      const tried = new Map<number, Tried>();
      return {
        lever,
        tryStep: (step) => {
          const before = tried.get(step);
          if (before !== undefined) return before;
          const candidate = lever.candidate(step);
          const result = { candidate, finding: findingAfter(candidate.patches) };
          tried.set(step, result);
          return result;
        },
      };
    });
  let alone = false;
  for (const tried of levers) {
    const { lever, tryStep } = tried;
    const step = leastStep(lever.steps, (each) => carries(tryStep(each)));
    const about = { lever: lever.id, path: lever.path };
    if (step < 0) {
      yield remedy(about, [], [], finding);
      continue;
    }
    alone = true;
    const found = tryStep(step);
    const smaller = step === 0 ? undefined : tryStep(step - 1);
    yield remedy(
      about,
      [changeOf(tried, found.candidate)],
      found.candidate.patches,
      found.finding,
      smaller && {
        text: smaller.candidate.text,
        ...(smaller.finding.margin === undefined ? {} : { margin: smaller.finding.margin }),
      },
    );
  }
  if (alone) return;

  const marginNow = finding.margin ?? 0;
  const ranked = levers
    .map((tried) => ({ tried, margin: tried.tryStep(tried.lever.steps - 1).finding.margin ?? marginNow }))
    .sort((a, b) => b.margin - a.margin);
  for (const [i, { tried: first, margin }] of ranked.slice(0, paired).entries()) {
    // two machines may hold the line by turns: what does nothing alone may still be the half that is missing
    if (!(margin > marginNow + 1e-6)) break;
    for (const { tried: second } of ranked.slice(i + 1)) {
      const at = (a: number, b: number): { patches: Candidate['patches']; after: Finding } => {
        const patches = [...first.lever.candidate(a).patches, ...second.lever.candidate(b).patches];
        return { patches, after: findingAfter(patches) };
      };
      if (at(first.lever.steps - 1, second.lever.steps - 1).after.verdict !== 'carries') continue;
      const ways = 32;
      const part = (lever: Lever, share: number): number =>
        Math.min(lever.steps - 1, Math.floor(((share + 1) / ways) * lever.steps));
      const share = leastStep(
        ways,
        (n) => at(part(first.lever, n), part(second.lever, n)).after.verdict === 'carries',
      );
      if (share < 0) continue;
      const b = part(second.lever, share);
      const a = leastStep(part(first.lever, share) + 1, (n) => at(n, b).after.verdict === 'carries');
      const back = leastStep(b + 1, (n) => at(a, n).after.verdict === 'carries');
      const { patches, after } = at(a, back);
      yield remedy(
        { lever: `${first.lever.id}+${second.lever.id}`, path: first.lever.path },
        [changeOf(first, first.lever.candidate(a)), changeOf(second, second.lever.candidate(back))],
        patches,
        after,
      );
    }
  }
}
