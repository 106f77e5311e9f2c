import type { Book } from '../book/index.ts';
import type { Assessment } from '../floor/assessment.ts';
import { checkWords, proofOfBook } from '../proof/index.ts';
import type { MovedFinding, RegisterRow, SettingAt, SettingsRead } from '../proof/settings/index.ts';
import { formatNumber } from '../quantity/index.ts';
import type { Bypass } from '../record/bypasses.ts';
import { settingMoments } from '../record/setting-moments.ts';
import { nameOnFloor } from './finding-names.ts';
import { sentenceOf } from './sentence.ts';
import type { ComparedSettings } from './settings-compared.ts';
import type { SettingsTold } from './settings-document.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const valueText = (at: SettingAt | undefined): string => {
  if (at === undefined) return '';
  if (at.odd === true) return words.say('settings.odd', { value: at.text });
  return at.beyond === undefined ? at.text : words.say('settings.beyond', { value: at.text });
};

/** Rows place by place. */
const rowsText = (rows: readonly RegisterRow[], { say }: SettingsTold): readonly string[] => {
  const places = [...new Set(rows.map(({ row }) => say.place(row)))];
  return places.map((place) =>
    [
      place,
      textTable(
        rows
          .filter(({ row }) => say.place(row) === place)
          .map(({ row, range, at }) => [
            say.name(row),
            row.format ?? '',
            say.range(row, range),
            ...settingMoments.map((moment) => valueText(at[moment])),
          ]),
      ),
    ].join('\n'),
  );
};

const bypassesText = (bypasses: readonly Bypass[], { say }: SettingsTold): readonly string[] => {
  const left = bypasses.filter(({ removed }) => removed === undefined);
  if (left.length === 0) return [];
  return [
    [
      words.say('settings.bypasses', { n: left.length }),
      ...left.map(
        ({ bypass, of, by, at }) =>
          `  ${words.say('settings.bypass', { bypass, of: say.thing(of), by, at })}`,
      ),
    ].join('\n'),
  ];
};

/** What the comparison is told with. */
interface Telling {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly world: World;
}

const movedText = (moved: readonly MovedFinding[], floor: string, telling: Telling): string => {
  const { book, assessment, world } = telling;
  const own = assessment.floors.find((one) => one.floor === floor);
  const side = (said: MovedFinding['from']): string => {
    if (said === undefined) return words.say('verdict.unknown');
    const verdict = words.say(`verdict.${said.verdict}`);
    if (said.margin === undefined) return verdict;
    return words.say('settings.margin', {
      verdict,
      margin: formatNumber(100 * said.margin, world.locale, 3),
    });
  };
  return moved
    .map(({ finding, from, to }) =>
      words.say('settings.moved', {
        name: own === undefined ? finding : nameOnFloor(book, own, finding),
        from: side(from),
        to: side(to),
      }),
    )
    .join('; ');
};

const comparedText = (
  { comparison, changes, moves, floor }: ComparedSettings,
  { say }: SettingsTold,
  telling: Telling,
): readonly string[] => {
  const { book, assessment } = telling;
  const { from, to, changed, same, untold } = comparison;
  const moment = (one: string): string => words.say(`setting.moment.${one}`);
  const checkNames = checkWords(book, words.say, words.has);
  const checks = new Map(
    proofOfBook(book, assessment)
      .floors.find((one) => one.floor === floor)
      ?.checks.map(({ check }) => [check.id, checkNames.name(check)]),
  );
  const names = (ids: readonly string[]): string => ids.map((id) => checks.get(id) ?? id).join('; ');
  const name = assessment.floors.find((one) => one.floor === floor)?.name ?? floor;
  return [
    words.say('settings.changed', {
      n: changed.length,
      from: moment(from),
      to: moment(to),
      same: same.length,
      untold: untold.length,
    }),
    ...changes.map(({ change: { row, from: was, to: is }, checks: touched, moves: own }) => {
      const stale = touched.filter((one) => one.stale).map(({ check }) => check);
      const others = touched.filter((one) => !one.stale).map(({ check }) => check);
      return [
        words.say('settings.change', {
          place: say.place(row),
          name: say.name(row),
          from: valueText(was),
          to: valueText(is),
        }),
        ...(is.record.why === undefined ? [] : [`  ${words.say('settings.why', { why: is.record.why })}`]),
        `  ${words.say('settings.by', { by: is.record.by })}`,
        ...(stale.length === 0 ? [] : [`  ${words.say('settings.stale', { checks: names(stale) })}`]),
        ...(others.length === 0 ? [] : [`  ${words.say('settings.touches', { checks: names(others) })}`]),
        ...(own.length === 0
          ? []
          : [`  ${words.say('settings.moves', { findings: movedText(own, floor, telling) })}`]),
      ].join('\n');
    }),
    moves.length === 0
      ? words.say('settings.none', { floor: name })
      : words.say('settings.all', { floor: name, findings: movedText(moves, floor, telling) }),
  ];
};

const sheetText = (read: SettingsRead, { say, register }: SettingsTold): readonly string[] => {
  const rows = new Map(register.rows.map(({ row }) => [row.id, row]));
  const name = (id: string): string => {
    const row = rows.get(id);
    return row === undefined ? id : say.name(row);
  };
  return [
    [
      words.say('settings.sheet.taken', { n: read.taken.length }),
      ...read.taken.map(({ row, setting, moment, value, before }) => {
        const line = words.say('settings.sheet.value', {
          row: String(row),
          name: name(setting),
          moment: words.say(`setting.moment.${moment}`),
          value,
        });
        return `  ${line}${before === undefined ? '' : `, ${words.say('settings.sheet.before', { before })}`}`;
      }),
    ].join('\n'),
    ...(read.notUnderstood.length === 0
      ? []
      : [
          [
            words.say('settings.sheet.not', { n: read.notUnderstood.length }),
            ...read.notUnderstood.flatMap(({ row, given, problems }) => [
              `  ${words.say('settings.sheet.row', { row: String(row), given })}`,
              ...problems.map((problem) => `    ${sentenceOf(problem)}`),
            ]),
          ].join('\n'),
        ]),
    words.say('settings.sheet.rest', {
      unchanged: read.unchanged,
      empty: read.empty,
      missing: read.missing.length,
    }),
  ];
};

/** The register place by place, or what was asked of it. */
export const settingsTextOf = (told: SettingsTold, telling: Telling): string => {
  const { register, compared, read, bypasses } = told;
  const readAt = (moment: (typeof settingMoments)[number]): number =>
    register.rows.filter(({ at }) => at[moment] !== undefined).length;
  const blocks =
    read !== undefined
      ? sheetText(read, told)
      : compared !== undefined
        ? comparedText(compared, told, telling)
        : [
            words.say('settings.heading', {
              n: register.rows.length,
              runOff: readAt('run-off'),
              shipped: readAt('shipped'),
              left: readAt('as left'),
            }),
            ...rowsText(register.rows, told),
          ];
  return [...blocks, ...bypassesText(bypasses, told), words.say('setting.caution')].join('\n\n').concat('\n');
};
