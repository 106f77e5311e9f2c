import type { BookProof, FloorProof, Gate } from '../proof/index.ts';
import { acceptances } from '../record/reply.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';
import { toldLacks } from './told-lacks.ts';

/** What one can answer to, with the points that are open there. */
interface Answerable {
  readonly name: string;
  readonly passes?: string;
  readonly floor?: string;
  readonly open: readonly { readonly id: string; readonly name: string }[];
}

const ofGate = (gate: Gate, floor: FloorProof, proof: BookProof, telling: Telling): Answerable => {
  const nameOf = toldLacks(proof, floor, telling);
  return {
    name: telling.say('witness.reply.gate', {
      floor: floor.name,
      gate: telling.say(`proof.gate.${gate.gate}`),
    }),
    passes: gate.gate,
    floor: floor.floor,
    open: gate.lacks.map((lack) => ({ id: lack.id, name: nameOf(lack) })),
  };
};

const answerables = (proof: BookProof, telling: Telling): readonly Answerable[] => [
  {
    name: telling.say('witness.reply.whole'),
    open: proof.punch
      .filter(({ state }) => state === 'open')
      .map(({ point, text }) => ({ id: point, name: `${point}: ${text}` })),
  },
  ...proof.floors.flatMap((floor) =>
    floor.gates.filter(({ passed }) => !passed).map((gate) => ofGate(gate, floor, proof, telling)),
  ),
];

const openPart = (
  { open }: Answerable,
  at: number,
  { say }: Telling,
): Markup => html`<fieldset class="open" data-answers="${at}" hidden>
<legend>${say('witness.reply.open')}</legend>
${open.length === 0 ? html`<p>${say('witness.reply.open.none')}</p>` : html`<p><button type="button" class="all">${say('witness.reply.all')}</button></p>`}
${open.map(
  ({ id, name }) => html`<label><input type="checkbox" name="open" value="${id}"> ${own(name)}</label>
`,
)}</fieldset>
`;

/** Where the witness says who they are and how they take it; what the script shows stands here already, hidden. */
export const replyPart = (proof: BookProof, telling: Telling): Markup => {
  const { say } = telling;
  const all = answerables(proof, telling);
  return html`<form id="reply" aria-labelledby="reply-title" autocomplete="off" novalidate hidden>
<h2 id="reply-title">${say('witness.reply')}</h2>
<p class="quiet">${say('witness.reply.about')}</p>
<label>${say('witness.reply.by')} <input name="by" maxlength="200" dir="auto" aria-describedby="reply-name"></label>
<label>${say('witness.reply.role')} <input name="role" maxlength="200" dir="auto" aria-describedby="reply-name"></label>
<label>${say('witness.reply.what')} <select name="answers">${all.map(
    ({ name, passes, floor }, at) =>
      html`<option value="${at}"${passes !== undefined && html` data-passes="${passes}" data-floor="${floor ?? ''}"`}>${name}</option>`,
  )}</select></label>
<fieldset><legend>${say('witness.reply.how')}</legend>
${acceptances.map(
  (
    one,
  ) => html`<label><input type="radio" name="accepted" value="${one}"${one === 'not' && html` checked`}> ${say(`witness.reply.${one}`)}</label>
`,
)}</fieldset>
${all.map((one, at) => openPart(one, at, telling))}<label>${say('witness.reply.remark')} <textarea name="remark" rows="3" maxlength="8000" dir="auto"></textarea></label>
<p>${say('witness.reply.comments')} <output id="comments">0</output></p>
<p role="alert"><span id="reply-name" hidden>${say('witness.reply.name')}</span><span id="reply-no-open" hidden>${say('witness.reply.noOpen')}</span><span id="reply-broken" hidden>${say('witness.reply.broken')}</span></p>
<p><button type="submit">${say('witness.reply.sign')}</button></p>
<div id="reply-done" role="status" tabindex="-1" hidden>
<p>${say('witness.reply.done')} <bdi id="reply-file"></bdi></p>
<p>${say('witness.reply.digits')}<br><code class="digits" id="reply-digits"></code></p>
<p class="quiet">${say('witness.reply.keep')}</p>
<label>${say('witness.reply.text')} <textarea id="reply-text" rows="4" readonly></textarea></label>
</div>
</form>
`;
};
