import type { PunchPoint } from '../proof/index.ts';
import { homeOfPoint } from './choose-media.ts';
import { html, type Markup, own } from './markup.ts';
import { mediaFigure } from './media-figure.ts';
import type { Telling } from './telling.ts';

const pointPart = (one: PunchPoint, telling: Telling): Markup => {
  const { say, checks } = telling;
  const { point, text, state, of, owner, due, why, found, evidence } = one;
  return html`<li data-point="${state}"><strong>${own(point)}</strong> ${own(text)} <small>${say(`witness.point.${state}`)}${one.class !== undefined && html`, ${say('witness.point.class', { class: one.class })}`}</small>
<br>${own([...of.map(checks.thing), ...(owner === undefined ? [] : [say('witness.point.owner', { owner })]), ...(due === undefined ? [] : [say('witness.point.due', { due })]), say('witness.point.found', { by: found.by, at: found.at }), ...(why === undefined ? [] : [why])].join('; '))}
${evidence.map((digest) => mediaFigure(digest, homeOfPoint(point), telling))}</li>
`;
};

/** The punch list: what is open first. */
export const punchPart = (punch: readonly PunchPoint[], telling: Telling): Markup => {
  const { say } = telling;
  const sorted = [
    ...punch.filter(({ state }) => state === 'open'),
    ...punch.filter(({ state }) => state !== 'open'),
  ];
  return html`<section id="punch">
<h2>${say('witness.punch')}</h2>
${
  sorted.length === 0
    ? html`<p>${say('witness.punch.none')}</p>`
    : html`<ul class="points">
${sorted.map((one) => pointPart(one, telling))}</ul>`
}
</section>
`;
};
