import type { Book } from '../book/index.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import { formatNumber } from '../quantity/index.ts';
import { findUnit } from '../quantity/unit-lookup.ts';
import type { Asked, PutQuestion } from './asked-of-floor.ts';
import { nameOnFloor } from './finding-names.ts';
import { words } from './words.ts';

/** Longer lists of what waits are told by their first. */
const told = 6;

const answerText = ({ kind, unit, choices, takes }: PutQuestion): string | undefined => {
  if (takes === 'part') return words.say('questions.part');
  if (choices !== undefined) return words.say('questions.choices', { choices: choices.join(', ') });
  const label = kind === undefined || unit === undefined ? undefined : findUnit(kind, unit)?.label;
  return label === undefined || label === '' ? undefined : words.say('questions.in', { unit: label });
};

const whyText = (question: PutQuestion, floor: FloorAssessment, book: Book, locale: string): string => {
  const { why, findings, figures, settles, share } = question;
  const waiting = [...findings, ...figures].map((id) => nameOnFloor(book, floor, id));
  const names = [...new Set(waiting)];
  const what = [...names.slice(0, told), ...(names.length > told ? ['…'] : [])].join('; ');
  const reason = words.say(`questions.why.${why}`);
  if (what === '') return reason;
  if (settles === 0 && why === 'assumed') {
    const percent = formatNumber(share * 100, locale, 2);
    return `${reason}; ${words.say('questions.widens', { percent, what })}`;
  }
  return `${reason}; ${words.say('questions.waits', { what })}`;
};

/** The questions of a floor by who can answer them, each with what waits for it. */
export const questionsList = (book: Book, { floor, questions }: Asked, locale: string): string => {
  const sides = (['site', 'builder'] as const).flatMap((side) => {
    const own = questions.filter(({ who }) => who === side);
    if (own.length === 0) return [];
    const lines = own.flatMap((question, i) => {
      const answer = answerText(question);
      return [
        `${`${i + 1}.`.padStart(5)} ${question.text}${answer === undefined ? '' : ` (${answer})`}`,
        `      ${whyText(question, floor, book, locale)}`,
      ];
    });
    return [`${words.say(`questions.who.${side}`)}\n${lines.join('\n')}`];
  });
  const head = words.say('questions.head', { floor: floor.name, count: questions.length });
  return `${[head, ...sides].join('\n\n')}\n`;
};
