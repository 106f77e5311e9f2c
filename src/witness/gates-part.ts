import type { BookProof, FloorProof, Gate } from '../proof/index.ts';
import type { Envelope } from '../record/envelope.ts';
import { keyFingerprint } from '../record/fingerprint.ts';
import { isSignature, type SignatureRecord, signatureProblems } from '../record/signature.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';
import { toldLacks } from './told-lacks.ts';

const gateState = ({ signed, passed, unnamed }: Gate, { say }: Telling): string => {
  if (signed === undefined) return say('witness.gate.unsigned');
  return say(passed ? 'witness.gate.passed' : 'witness.gate.unnamed', {
    by: signed.by,
    role: signed.role,
    n: unnamed.length,
  });
};

const gatePart = (gate: Gate, floor: FloorProof, proof: BookProof, telling: Telling): Markup => {
  const { say } = telling;
  const nameOf = toldLacks(proof, floor, telling);
  const { lacks } = gate;
  return html`<h3>${own(floor.name)}: ${say(`proof.gate.${gate.gate}`)}</h3>
<p data-passed="${gate.passed ? 'yes' : 'no'}">${own(gateState(gate, telling))} ${say('witness.gate.lacks', { n: lacks.length })}</p>
${
  lacks.length > 0 &&
  html`<details><summary>${say('witness.gate.which')}</summary><ul>${lacks.map(
    (lack) =>
      html`<li>${say(`proof.lack.${lack.sort}`)}: ${own(nameOf(lack))} <small>${say(`proof.holder.${lack.holder}`)}</small></li>`,
  )}</ul></details>`
}
`;
};

const signaturePart = (record: SignatureRecord, { say }: Telling): Markup => {
  const { by, role, statement, passes, floor, open = [], key } = record.body;
  const right = signatureProblems(record, undefined, '').length === 0;
  return html`<li>${own(say('witness.signed', { by, role, at: record.deviceTime }))} ${own(statement)}${passes !== undefined && html` (${own([say(`proof.gate.${passes}`), ...(floor === undefined ? [] : [floor])].join(', '))})`}${open.length > 0 && html`<br>${own(say('witness.signed.open', { open: open.join('; ') }))}`}<br>${say(right ? 'witness.signed.key' : 'witness.signed.wrong')} <code>${keyFingerprint(key)}</code></li>`;
};

/** The gates of every floor, and everything that was signed with a key. */
export const gatesPart = (proof: BookProof, records: readonly Envelope[], telling: Telling): Markup => {
  const { say } = telling;
  const signatures = records.filter(isSignature);
  return html`<section id="gates">
<h2>${say('witness.gates')}</h2>
${proof.floors.map((floor) => floor.gates.map((gate) => gatePart(gate, floor, proof, telling)))}<h3>${say('witness.signatures')}</h3>
${signatures.length === 0 ? html`<p>${say('witness.signatures.none')}</p>` : html`<ul>${signatures.map((one) => signaturePart(one, telling))}</ul><p class="quiet">${say('witness.signatures.whose')}</p>`}
</section>
`;
};
