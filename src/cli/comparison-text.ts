import type { Finding, FloorAssessment } from '../floor/assessment.ts';
import { formatNumber } from '../quantity/index.ts';
import { textTable, widthOf } from './text-table.ts';
import { figureName, figureText, type Told } from './told.ts';
import { words } from './words.ts';

type Table = (floors: readonly FloorAssessment[], told: Told) => string;

const percent = (margin: number, locale: string): string =>
  words.say('assess.margin', { margin: `${margin > 0 ? '+' : ''}${formatNumber(margin * 100, locale, 2)}` });

/** The verdict in words with what was asked, then the margin: never a sign or a colour alone. */
const verdictText = ({ verdict, sense, demand, margin, ifSaid }: Finding, told: Told): string => {
  const asked = { demand: figureText(demand, told) };
  if (verdict === 'unknown') {
    const said = words.say('verdict.unknown');
    return demand.value === undefined ? said : `${said}, ${words.say('verdict.unknown.demand', asked)}`;
  }
  const said = words.say(`verdict.${sense}.${verdict}`, asked);
  const mark = ifSaid ? ' *' : '';
  return margin === undefined ? said + mark : `${said}, ${percent(margin, told.world.locale)}${mark}`;
};

const floorHead = (floor: FloorAssessment): string => `${floor.name} (${words.say(`role.${floor.role}`)})`;

/** One row a finding: what each floor has, and the verdict beside it. */
const findingsTable: Table = (floors, told) => {
  const ids = [...new Set(floors.flatMap(({ findings }) => findings.map(({ id }) => id)))];
  const row = (id: string) => [
    figureName(id),
    ...floors.flatMap(({ findings }) => {
      const finding = findings.find((one) => one.id === id);
      return finding === undefined ? ['', ''] : [figureText(finding.have, told), verdictText(finding, told)];
    }),
  ];
  return textTable([['', ...floors.flatMap((floor) => [floorHead(floor), ''])], ...ids.map(row)]);
};

/** The figures that no finding shows already, each once, in the order of the first floor that has it. */
const figuresTable: Table = (floors, told) => {
  const inFindings = new Set(
    floors.flatMap(({ findings }) => findings.flatMap(({ id, demand, have }) => [id, demand.id, have.id])),
  );
  const ids = [...new Set(floors.flatMap(({ figures }) => Object.keys(figures)))];
  const row = (id: string) => [
    figureName(id),
    ...floors.map(({ figures }) => {
      const figure = figures[id];
      return figure === undefined ? '' : figureText(figure, told);
    }),
  ];
  // what neither has a value nor misses one does not belong to a floor of this kind
  const belongs = (id: string): boolean =>
    floors.some(({ figures }) => {
      const figure = figures[id];
      return figure !== undefined && (figure.value !== undefined || figure.missing.length > 0);
    });
  const rest = ids.filter((id) => !inFindings.has(id) && belongs(id));
  return textTable([['', ...floors.map(floorHead)], ...rest.map(row)]);
};

/** Side by side; a narrow terminal gets the floors one below the other. */
const fitted = (table: Table, floors: readonly FloorAssessment[], told: Told): readonly string[] => {
  const whole = table(floors, told);
  return widthOf(whole) <= told.world.columns ? [whole] : floors.map((floor) => table([floor], told));
};

/** The floors compared figure by figure: findings first. */
export const comparisonText = (floors: readonly FloorAssessment[], told: Told): readonly string[] => [
  ...fitted(findingsTable, floors, told),
  ...fitted(figuresTable, floors, told),
];
