import { type JudgedResult, judgedEarlier, type ProvedCheck } from '../proof/index.ts';
import type { HeardReply } from '../proof/replies.ts';
import { tryKey } from '../record/standing.ts';
import { homeOfCheck } from './choose-media.ts';
import { html, type Markup, own } from './markup.ts';
import { mediaFigure } from './media-figure.ts';
import { readingsChart } from './readings-chart.ts';
import type { Telling } from './telling.ts';

const heldText = (held: boolean | undefined, { say }: Telling): string =>
  say(`witness.held.${held === undefined ? 'unknown' : held ? 'yes' : 'no'}`);

const conditionRows = ({ conditions, ownConditions }: JudgedResult, telling: Telling): Markup | false => {
  const { checks, say } = telling;
  if (conditions.length + ownConditions.length === 0) return false;
  const rows = [
    ...conditions.map(({ condition, read, held }) => ({
      name: checks.condition(condition.id),
      must: condition.word ?? condition.limits.map(checks.limit).join(', '),
      read: read ?? say('witness.unread'),
      held,
    })),
    ...ownConditions.map(({ text, held }) => ({ name: text, must: '', read: heldText(held, telling), held })),
  ];
  return html`<table class="read"><caption>${say('witness.conditions')}</caption>
<thead><tr><th scope="col">${say('witness.condition')}</th><th scope="col">${say('witness.must')}</th><th scope="col">${say('witness.read')}</th><th scope="col">${say('witness.held')}</th></tr></thead>
<tbody>${rows.map(
    ({ name, must, read, held }) =>
      html`<tr><th scope="row">${own(name)}</th><td>${own(must)}</td><td>${own(read)}</td><td data-held="${held === undefined ? 'unknown' : held ? 'yes' : 'no'}">${heldText(held, telling)}</td></tr>`,
  )}</tbody></table>`;
};

const row = (name: string, value: string | undefined): Markup | false =>
  value !== undefined && value !== '' && html`<dt>${name}</dt><dd>${own(value)}</dd>`;

/** One try as it was written down, and what it came to. */
const tryPart = (one: ProvedCheck, judged: JudgedResult, telling: Telling): Markup => {
  const { say, checks } = telling;
  const { by, at, readings = [], seen, witness, instrument, remark, concession, late } = judged.result;
  return html`<dl>${row(say('witness.tried'), say('witness.tried.by', { by, at }))}${row(say('witness.comesTo'), say(`proof.state.${judged.verdict}`))}${row(say('witness.whyNot'), checks.shortfalls(one.check, judged))}${row(say('witness.readings'), readings.join(', '))}${row(say('witness.seen'), seen === undefined ? undefined : say(seen ? 'witness.yes' : 'witness.no'))}${row(say('witness.instrument'), instrument)}${row(say('witness.witness'), witness)}${row(say('witness.concession'), concession === undefined ? undefined : say('proof.conceded', { ...concession }))}${row(say('witness.late'), late === undefined ? undefined : say('proof.awaited', { ...late }))}${row(say('witness.remark'), remark)}</dl>`;
};

const repliesTo = (
  floor: string,
  check: string,
  replies: readonly HeardReply[],
  { say }: Telling,
): readonly Markup[] =>
  replies.flatMap(({ reply: { by, at, comments } }) =>
    comments
      .filter((one) => one.floor === floor && one.check === check)
      .map(
        ({ text }) =>
          html`<p class="said">${own(text)} <small>${own(say('witness.tried.by', { by, at }))}</small></p>`,
      ),
  );

/** One check: what must be, what was, why it stands where it stands, and room for what the witness says to it. */
export const checkPart = (
  one: ProvedCheck,
  floor: string,
  place: string,
  replies: readonly HeardReply[],
  telling: Telling,
): Markup => {
  const { say, checks, triesLeft } = telling;
  const { check, state, inForce } = one;
  const earlier = judgedEarlier(one);
  const left = triesLeft.get(tryKey(floor, check.id)) ?? 0;
  const why = checks.why(one);
  const before = repliesTo(floor, check.id, replies, telling);
  return html`<li><details class="check" id="${place}">
<summary><span class="name">${own(checks.name(check))}${check.point !== 'none' && html` <small>${say(`proof.point.${check.point}`)}</small>`}</span>
<span class="limit">${own(checks.limits(check))}</span>
<span class="state" data-state="${state}">${say(`proof.state.${state}`)}</span>${why !== '' && html`<span class="why">${own(why)}</span>`}</summary>
<p>${own(checks.expected(check))}</p>
<dl>${row(say('witness.plan'), checks.plan(check))}</dl>
${readingsChart(one, telling)}${inForce !== undefined && tryPart(one, inForce, telling)}
${inForce !== undefined && conditionRows(inForce, telling)}
${(inForce?.result.evidence ?? []).map((digest) => mediaFigure(digest, homeOfCheck(floor, check.id), telling))}
${earlier.length > 0 && html`<h5>${say('witness.earlier')}</h5>${left > 0 && html`<p class="quiet">${say('witness.earlier.left', { n: left })}</p>`}${earlier.map((judged) => tryPart(one, judged, telling))}`}
${before}<label class="comment">${say('witness.comment')}<textarea rows="2" maxlength="4000" dir="auto" data-check="${check.id}" data-floor="${floor}"></textarea></label>
</details></li>
`;
};
