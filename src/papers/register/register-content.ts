import { floorBoundFor } from '../../book/floor-bound-for.ts';
import {
  type RegisterRow,
  type SettingRegister,
  settingName,
  settingWords,
} from '../../proof/settings/index.ts';
import { settingMoments } from '../../record/setting-moments.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { allowedText, settingText } from '../setting-text.ts';
import type { Citations, Marks } from '../workings/citations.ts';

/** One setting on paper: what it was at each moment, with room to write where nobody recorded it. */
export interface RegisterLine {
  readonly what: string;
  readonly allowed: string;
  /** Marks of the workings behind what is allowed. */
  readonly mark: Marks;
  /** As the book designs it; empty where it does not say. */
  readonly designed: string;
  readonly at: readonly { readonly text: string; readonly beyond: boolean; readonly changed: boolean }[];
  /** Why it was changed, by whom. */
  readonly why: string;
}

export interface RegisterContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly about: string;
  readonly moments: readonly string[];
  readonly places: readonly { readonly place: string; readonly lines: readonly RegisterLine[] }[];
  readonly words: Readonly<Record<string, string>>;
}

const lineOf = (
  one: RegisterRow,
  names: ReturnType<typeof settingWords>,
  mark: (row: RegisterRow) => Marks,
  paper: PaperWords,
): RegisterLine => {
  const { row } = one;
  const texts = settingMoments.map((moment) => one.at[moment]);
  const last = texts.findLast((at) => at !== undefined);
  return {
    what: settingName(row, names, paper.book, paper.say),
    allowed: allowedText(one, paper),
    mark: mark(one),
    designed: settingText(row.form, row.designed, paper),
    at: texts.map((at, i) => {
      const before = texts.slice(0, i).findLast((earlier) => earlier !== undefined);
      return {
        text: settingText(row.form, at?.text, paper),
        beyond: at?.beyond !== undefined,
        changed: at !== undefined && before !== undefined && at.text !== before.text,
      };
    }),
    why: [last?.record.why, last?.record.by].filter((part) => part !== undefined).join(', '),
  };
};

/** Everything that stands on the register of settings, by the place at which it is turned, typed or moved. */
export const registerContent = (
  register: SettingRegister,
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): RegisterContent => {
  const { say } = paper;
  const names = settingWords(paper.book, say, paper.locale);
  const site = floorBoundFor(paper.book, undefined);
  const mark = ({ range: { least, most } }: RegisterRow): Marks =>
    citations.mark(site, least?.working, most?.working);
  const places = new Map<string, RegisterLine[]>();
  for (const one of register.rows) {
    const place = names.place(one.row);
    places.set(place, [...(places.get(place) ?? []), lineOf(one, names, mark, paper)]);
  }
  const keys = ['what', 'allowed', 'designed', 'why', 'none', 'beyond', 'caution'];
  return {
    head: { ...paperHead(say('register.title'), options, paper), caution: say('register.foot') },
    subtitle: subtitleOf(paper),
    about: say('register.about'),
    moments: settingMoments.map((moment) => say(`setting.moment.${moment}`)),
    places: [...places].map(([place, lines]) => ({ place, lines })),
    words: {
      ...Object.fromEntries(keys.map((key) => [key, say(`register.${key}`)])),
      care: say('paper.care'),
      workingKey: say('workings.key'),
    },
  };
};
