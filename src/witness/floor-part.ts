import { type CarryOver, type CheckState, type FloorProof, stages } from '../proof/index.ts';
import type { HeardReply } from '../proof/replies.ts';
import { checkPart } from './check-part.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';

/** Where a check stands in the file. */
export const checkPlace = (floor: number, check: number): string => `c-${floor}-${check}`;

const countsText = ({ progress, checks }: FloorProof, { say }: Telling): string => {
  const counts = (Object.entries(progress.counts) as readonly [CheckState, number][])
    .filter(([, n]) => n > 0)
    .map(([state, n]) => `${say(`proof.state.${state}`)} ${n}`);
  return say('witness.counts', { n: checks.length, counts: counts.join(', ') });
};

const conditionsPart = ({ checks }: FloorProof, telling: Telling): Markup | false => {
  const each = new Map(checks.flatMap(({ check }) => check.under.map((one) => [one.id, one] as const)));
  const { say, quantity, number } = telling;
  if (each.size === 0) return false;
  return html`<h3>${say('witness.conditions')}</h3>
<p class="quiet">${say('witness.conditions.about')}</p>
<div class="wide" role="group" aria-label="${say('witness.conditions')}" tabindex="0"><table>
<thead><tr><th scope="col">${say('witness.condition')}</th><th scope="col">${say('witness.must')}</th><th scope="col">${say('witness.has')}</th><th scope="col">${say('witness.here')}</th></tr></thead>
<tbody>${[...each.values()].map(
    ({ id, limits, word, have, haveWord, here, by }) =>
      html`<tr data-here="${here}"><th scope="row">${own(telling.checks.condition(id))}</th><td>${own(word ?? limits.map(telling.checks.limit).join(', '))}</td><td>${own(haveWord ?? (have?.value === undefined ? '' : quantity(have.value, have.kind)))}</td><td>${say(`proof.here.${here}`)}${by !== undefined && say('witness.by', { by: number(100 * by) })}</td></tr>`,
  )}</tbody></table></div>
`;
};

const carriedPart = (
  floor: FloorProof,
  all: readonly FloorProof[],
  at: number,
  { say, checks }: Telling,
): Markup | false => {
  const [first] = floor.carryOver;
  if (first === undefined) return false;
  const before = all.find((one) => one.floor === first.from);
  const there = new Map(before?.checks.map((one) => [one.check.id, one]));
  const item = (one: CarryOver): Markup | false => {
    const i = floor.checks.findIndex(({ check }) => check.id === one.check);
    const here = floor.checks[i];
    return (
      here !== undefined &&
      html`<li><a href="#${checkPlace(at, i)}">${own(checks.name(here.check))}</a>: ${own(checks.reason(one, there.get(one.check)))}</li>`
    );
  };
  return html`<h3>${say('witness.carried', { n: floor.carryOver.length })}</h3>
<p class="quiet">${own(say('witness.carried.about', { from: before?.name ?? first.from }))}</p>
<ul>${floor.carryOver.map(item)}</ul>
`;
};

/** A floor: how far it is, under which conditions, what came over, and its protocol in order. */
export const floorPart = (
  floor: FloorProof,
  at: number,
  all: readonly FloorProof[],
  replies: readonly HeardReply[],
  telling: Telling,
): Markup => {
  const { say } = telling;
  const placed = floor.checks.map((one, i) => ({ one, place: checkPlace(at, i) }));
  return html`<section id="floor-${at}" class="floor" data-hue="${at % 4}">
<h2>${own(floor.name)} <small>${say(`role.${floor.role}`)}</small></h2>
<p>${countsText(floor, telling)}</p>
${conditionsPart(floor, telling)}${carriedPart(floor, all, at, telling)}<h3>${say('witness.protocol')}</h3>
<p class="quiet">${say('witness.protocol.about')}</p>
${stages.map((stage) => {
  const here = placed.filter(({ one }) => one.check.stage === stage);
  return (
    here.length > 0 &&
    html`<h4>${say(`proof.stage.${stage}`)}</h4>
<ol class="checks">
${here.map(({ one, place }) => checkPart(one, floor.floor, place, replies, telling))}</ol>
`
  );
})}</section>
`;
};
