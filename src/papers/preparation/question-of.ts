import type { FloorAssessment } from '../../floor/assessment.ts';
import { type OpenQuestion, questionText } from '../../floor/questions/index.ts';
import { unitNamed } from '../../quantity/convert.ts';
import { defaultUnit } from '../../quantity/index.ts';
import { findingName } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import { type PreparationQuestion, type Trade, trades } from './preparation-content.ts';

/** Who of the site answers: the trade whose finding waits, else the one whose part of the floor it is. */
export const tradeOf = ({ path, utility }: OpenQuestion): Trade => {
  if (utility !== undefined) return utility;
  const part = /^\/floors\/\d+\/([^/]+)/.exec(path)?.[1] ?? '';
  if (part === 'supply') return 'water';
  return trades.find((trade) => trade === part) ?? 'site';
};

/** Longer lists of what waits are told by their first. */
const told = 4;

const whyText = (asked: OpenQuestion, floor: FloorAssessment, paper: PaperWords): string => {
  const names = [...new Set(asked.findings.map((id) => findingName(id, floor, paper)))];
  const findings = [...names.slice(0, told), ...(names.length > told ? ['…'] : [])].join('; ');
  const key = `preparation.why.${asked.why}`;
  return findings === '' ? paper.say(`${key}.alone`) : paper.say(key, { findings });
};

/** The unit that stands behind the line to write on: that of the book, else the usual one. */
const unitOf = ({ kind, unit }: OpenQuestion, { book }: PaperWords): string | undefined => {
  if (kind === undefined) return undefined;
  const { label } = unitNamed(kind, unit ?? defaultUnit(kind, book.about?.system ?? 'metric'));
  return label === '' ? undefined : label;
};

/** An open question as a person can answer it on paper. */
export const questionOf = (
  asked: OpenQuestion,
  floor: FloorAssessment,
  paper: PaperWords,
): PreparationQuestion => {
  const { path, choices } = asked;
  const question = questionText(paper.book, path, paper);
  const unit = unitOf(asked, paper);
  const shown = choices?.map((choice) => paper.sayOr(`word.${choice}`, choice));
  return {
    text:
      shown === undefined
        ? question
        : paper.say('preparation.oneOf', { question, choices: shown.join(', ') }),
    place: path,
    ...(unit === undefined ? {} : { unit }),
    why: whyText(asked, floor, paper),
  };
};
