import type { FloorAssessment } from '../../floor/assessment.ts';
import type { PaperWords } from '../paper-words.ts';
import type { ShownFloor } from './spine.ts';

/** What a floor's answer rests on: what is missing, what was assumed, what to know. */
export interface RestsOn {
  readonly hue: number;
  readonly title: string;
  readonly missing: readonly string[];
  readonly decides: readonly { readonly place: string; readonly findings: string }[];
  readonly assumed: readonly string[];
  readonly notes: readonly string[];
}

const placesOf = ({ figures, findings }: FloorAssessment, of: 'assumed' | 'missing'): readonly string[] => [
  ...new Set([
    ...Object.values(figures).flatMap((figure) => figure[of]),
    ...findings.flatMap(({ demand, have }) => [...demand[of], ...have[of]]),
  ]),
];

export const restsOn = ({ floor, hue }: ShownFloor, paper: PaperWords): RestsOn => {
  const decided = new Map<string, string[]>();
  for (const { decides, id } of floor.findings) {
    if (decides === undefined) continue;
    decided.set(decides, [...(decided.get(decides) ?? []), paper.name(id)]);
  }
  const notes = [...floor.notes, ...floor.findings.flatMap((finding) => finding.notes)];
  return {
    hue,
    title: paper.say('prediction.known.of', { floor: floor.name }),
    missing: placesOf(floor, 'missing')
      .filter((path) => !decided.has(path))
      .map(paper.place),
    decides: [...decided].map(([path, names]) => ({
      place: paper.place(path),
      findings: paper.say('prediction.known.decides', { findings: names.join(', ') }),
    })),
    assumed: placesOf(floor, 'assumed').map(paper.place),
    notes: [...new Set(notes.map(({ code, parts }) => paper.say(code, parts)))],
  };
};
