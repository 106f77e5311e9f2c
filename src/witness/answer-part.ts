import type { Assessment, Finding, FloorAssessment } from '../floor/assessment.ts';
import { barShape } from '../floor/bar-shape.ts';
import { tellingDigits } from '../floor/telling-digits.ts';
import { findingBar } from './finding-bar.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';

const figureText = (
  { value, low, high, kind }: Finding['have'],
  { say, quantity, interval }: Telling,
  digits: number,
): string => {
  if (value === undefined) return say('witness.unknown');
  return low === undefined || high === undefined || low === high
    ? quantity(value, kind, digits)
    : interval(value, [low, high], kind);
};

const verdictText = (finding: Finding, { say, quantity }: Telling): string => {
  const { demand, have, sense, verdict } = finding;
  if (demand.value === undefined) return say('verdict.unknown.none');
  const asked = { demand: quantity(demand.value, demand.kind, tellingDigits(finding)) };
  if (verdict !== 'unknown') return say(`verdict.${sense}.${verdict}`, asked);
  if (have.value === undefined) return say('verdict.unknown.demand', asked);
  return say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', asked);
};

const holdText = ({ hold }: FloorAssessment, { book, say, has, quantity }: Telling): string => {
  if (hold === undefined) return say('hold.none');
  const station = book.line?.stations?.find(({ tag }) => tag === hold.station)?.name ?? hold.station;
  const parts = { seconds: quantity(hold.waits, 'time', 3), station };
  return say(has(`hold.by.${hold.by}`) ? `hold.by.${hold.by}` : 'hold.by.other', parts);
};

const findingRow = (finding: Finding, telling: Telling): Markup => html`<tr data-verdict="${finding.verdict}">
<th scope="row">${telling.has(`figure.${finding.id}`) ? telling.say(`figure.${finding.id}`) : finding.id}</th>
<td>${figureText(finding.have, telling, tellingDigits(finding))}${finding.ifSaid && ' *'}</td>
<td class="bar">${findingBar(barShape(finding), finding.sense === 'most')}</td>
<td>${verdictText(finding, telling)}</td>
</tr>`;

const floorAnswer = (floor: FloorAssessment, hue: number, telling: Telling): Markup => {
  const rate = floor.findings.find(({ id }) => id === 'runningRate');
  return html`<section class="floor-answer" data-hue="${hue % 4}">
<h3>${own(floor.name)} <small>${telling.say(`role.${floor.role}`)}</small></h3>
<p class="large">${rate === undefined ? telling.say('witness.unknown') : figureText(rate.have, telling, tellingDigits(rate))}
<span data-verdict="${rate?.verdict ?? 'unknown'}">${rate === undefined ? '' : verdictText(rate, telling)}</span></p>
<p>${own(holdText(floor, telling))}</p>
<div class="wide" role="group" aria-label="${floor.name}" tabindex="0"><table>
<thead><tr><th scope="col">${telling.say('witness.finding')}</th><th scope="col">${telling.say('witness.has')}</th><th scope="col" class="bar"><span class="aloud">${telling.say('witness.drawn')}</span></th><th scope="col">${telling.say('witness.verdict')}</th></tr></thead>
<tbody>
${floor.findings.map((finding) => findingRow(finding, telling))}
</tbody></table></div>
</section>
`;
};

/** Will it run there, at what rate, what holds it. */
export const answerPart = ({ floors }: Assessment, telling: Telling): Markup => html`<section id="answer">
<h2>${telling.say('witness.answer')}</h2>
<p class="quiet">${telling.say('witness.answer.about')}</p>
<div class="facing">
${floors.map((floor, hue) => floorAnswer(floor, hue, telling))}</div>
<p class="quiet">${telling.say('witness.key')}${floors.some(({ findings }) => findings.some(({ ifSaid }) => ifSaid)) && ` ${telling.say('witness.ifSaid')}`}</p>
</section>
`;
