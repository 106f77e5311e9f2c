import { type Book, placeName } from '../book/index.ts';
import type { Assessment, Figure, Finding, FloorAssessment, Remedy } from '../floor/assessment.ts';
import { formatNumber } from '../quantity/index.ts';
import { shown } from './shown.ts';
import { textTable, widthOf } from './text-table.ts';
import type { UnitWishes } from './unit-choice.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** What every part of the text needs. */
interface Told {
  readonly book: Book;
  readonly wishes: UnitWishes;
  readonly world: World;
}

const figureText = (figure: Figure, { wishes, world }: Told): string => {
  if (figure.value === undefined) return words.say('assess.unknown');
  const value = shown(figure.value, figure.kind, wishes, world.locale);
  if (figure.low === undefined || figure.high === undefined || figure.low === figure.high) return value;
  const end = (bound: number) => shown(bound, figure.kind, wishes, world.locale);
  return `${value} (${end(figure.low)} … ${end(figure.high)})`;
};

const percent = (margin: number, locale: string): string =>
  words.say('assess.margin', { margin: `${margin > 0 ? '+' : ''}${formatNumber(margin * 100, locale, 2)}` });

/** The verdict in words with what was asked, then the margin: never a sign or a colour alone. */
const verdictText = (finding: Finding, told: Told): string => {
  const { verdict, sense, demand, margin } = finding;
  if (verdict === 'unknown') {
    const known = demand.value !== undefined;
    return known
      ? `${words.say('verdict.unknown')}, ${words.say('verdict.unknown.demand', { demand: figureText(demand, told) })}`
      : words.say('verdict.unknown');
  }
  const said = words.say(`verdict.${sense}.${verdict}`, { demand: figureText(demand, told) });
  return margin === undefined ? said : `${said}, ${percent(margin, told.world.locale)}`;
};

const nameOf = (id: string): string => (words.has(`figure.${id}`) ? words.say(`figure.${id}`) : id);

const floorHead = (floor: FloorAssessment): string => `${floor.name} (${words.say(`role.${floor.role}`)})`;

/** Findings first, then the figures that no finding shows, each once, in the order of the first floor that has it. */
const comparison = (floors: readonly FloorAssessment[], told: Told): string => {
  const findingIds = [...new Set(floors.flatMap(({ findings }) => findings.map(({ id }) => id)))];
  const figureIds = [...new Set(floors.flatMap(({ figures }) => Object.keys(figures)))].filter(
    (id) => !findingIds.includes(id),
  );
  const findingRow = (id: string) => [
    nameOf(id),
    ...floors.flatMap(({ findings }) => {
      const finding = findings.find((one) => one.id === id);
      return finding === undefined ? ['', ''] : [figureText(finding.have, told), verdictText(finding, told)];
    }),
  ];
  const figureRow = (id: string) => [
    nameOf(id),
    ...floors.flatMap(({ figures }) => {
      const figure = figures[id];
      return [figure === undefined ? '' : figureText(figure, told), ''];
    }),
  ];
  return textTable([
    ['', ...floors.flatMap((floor) => [floorHead(floor), ''])],
    ...findingIds.map(findingRow),
    ...figureIds.map(figureRow),
  ]);
};

const lanesText = (floor: FloorAssessment, { wishes, world }: Told): string => {
  const head = ['lane', 'preset', 'flow', 'fillTime', 'volume', 'overflow', 'shortBy'];
  const rows = floor.lanes.map((lane) => [
    lane.lane,
    shown(lane.preset, 'count', wishes, world.locale),
    shown(lane.flowAllOpen, 'volumeFlow', wishes, world.locale),
    shown(lane.fillTime, 'time', wishes, world.locale),
    shown(lane.volume, 'volume', wishes, world.locale),
    shown(lane.overflow, 'volume', wishes, world.locale),
    shown(lane.shortBy, 'volume', wishes, world.locale),
  ]);
  return `${words.say('assess.lanes')}, ${floor.name}\n${textTable([head.map((id) => words.say(`assess.${id}`)), ...rows], true)}`;
};

const seconds = (value: number, { world }: Told): string =>
  shown(value, 'time', { byKind: {} }, world.locale);

const holdText = (floor: FloorAssessment, told: Told): string => {
  const { hold } = floor;
  if (hold === undefined) return `  ${floor.name}: ${words.say('hold.none')}`;
  const known = words.has(`hold.by.${hold.by}`) ? hold.by : 'other';
  const by = words.say(`hold.by.${known}`, { seconds: seconds(hold.waits, told), station: hold.station });
  const steps = hold.chain.map((step) => {
    const key = step.lane === undefined ? `step.${step.step}` : 'step.lane';
    const what = words.has(key) ? words.say(key, { lane: step.lane ?? '' }) : step.step;
    return words.say('hold.step', { what, seconds: seconds(step.seconds, told) });
  });
  return `  ${floor.name}: ${by}\n    ${steps.join(', ')}`;
};

/** `freeAir` is read as `free air`. */
const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** A place in the book in words: `Larkmoor, run, 2 in run, bore`. */
const placeText = (book: Book, path: string): string =>
  placeName(book, path)
    .map((part) => {
      if (part.is === 'thing') return part.name;
      return part.is === 'field' ? spaced(part.field) : `${spaced(part.of)} ${part.number}`;
    })
    .join(', ') || path;

const remedyText = (remedy: Remedy, { book, world }: Told): string => {
  const lever = words.has(`lever.${remedy.lever}`) ? words.say(`lever.${remedy.lever}`) : remedy.lever;
  if (remedy.answer === undefined) return `    ${words.say('assess.remedy.none', { lever })}`;
  const { answer, nextSmaller, patch } = remedy;
  const margin = (share: number) => formatNumber(Math.abs(share) * 100, world.locale, 2);
  const next =
    nextSmaller === undefined
      ? ''
      : `; ${words.say('assess.remedy.next', { text: nextSmaller.text, margin: margin(nextSmaller.margin) })}`;
  const places = patch.map(({ path }) => placeText(book, path)).join('; ');
  return `    ${words.say('assess.remedy', { lever, answer: answer.text })} (${places})${next}`;
};

const remediesText = (floors: readonly FloorAssessment[], remedies: readonly Remedy[], told: Told): string =>
  [
    words.say('assess.remedies'),
    ...floors.flatMap((floor) =>
      floor.findings
        .filter(({ id }) => remedies.some((one) => one.floor === floor.floor && one.finding === id))
        .flatMap(({ id }) => [
          `  ${floor.name}, ${nameOf(id)}`,
          ...remedies
            .filter((one) => one.floor === floor.floor && one.finding === id)
            .map((one) => remedyText(one, told)),
        ]),
    ),
  ].join('\n');

const remarks = (floor: FloorAssessment, { book }: Told): readonly string[] => {
  const notes = [...floor.notes, ...floor.findings.flatMap((finding) => finding.notes)];
  const assumed = [...new Set(Object.values(floor.figures).flatMap((figure) => figure.assumed))];
  const missing = [...new Set(Object.values(floor.figures).flatMap((figure) => figure.missing))];
  const places = (paths: readonly string[]) => paths.map((path) => placeText(book, path)).join('; ');
  const sentences = [
    ...new Set(notes.map(({ code, parts }) => words.say(code, parts))),
    ...(assumed.length === 0
      ? []
      : [words.say('assess.assumed', { count: assumed.length, paths: places(assumed) })]),
    ...(missing.length === 0 ? [] : [words.say('assess.missing', { paths: places(missing) })]),
  ];
  return sentences.map((sentence) => `  ${floor.name}: ${sentence}`);
};

/** The floors of a book side by side: figures with verdicts in words, lanes, what holds, what would carry it. */
export const assessText = (
  book: Book,
  { format, floors }: Assessment,
  remedies: readonly Remedy[] | undefined,
  wishes: UnitWishes,
  world: World,
): string => {
  const told = { book, wishes, world };
  const { title, builder, customer, demonstration } = book.about ?? {};
  const beside = comparison(floors, told);
  // a narrow terminal gets the floors one below the other
  const compared =
    widthOf(beside) <= world.columns ? [beside] : floors.map((floor) => comparison([floor], told));
  const head = [
    title,
    builder !== undefined && customer !== undefined
      ? words.say('assess.from', { builder, customer })
      : undefined,
    words.say('assess.format', { format }),
  ].filter((part) => part !== undefined);
  const said = floors.flatMap((floor) => remarks(floor, told));
  return [
    [head.join(', '), ...(demonstration === undefined ? [] : [demonstration])].join('\n'),
    ...compared,
    `${words.say('assess.holds')}\n${floors.map((floor) => holdText(floor, told)).join('\n')}`,
    ...floors.filter(({ lanes }) => lanes.length > 0).map((floor) => lanesText(floor, told)),
    ...(remedies === undefined || remedies.length === 0 ? [] : [remediesText(floors, remedies, told)]),
    ...(said.length === 0 ? [] : [said.join('\n')]),
    words.say('assess.caution'),
  ]
    .join('\n\n')
    .concat('\n');
};
