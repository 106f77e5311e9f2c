import type { HeardReply } from '../proof/replies.ts';
import { keyFingerprint } from '../record/fingerprint.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';

/** What was answered to earlier files; comments stand at their checks. */
export const repliesPart = (replies: readonly HeardReply[], { say }: Telling): Markup | false =>
  replies.length > 0 &&
  html`<section id="replies">
<h2>${say('witness.replies')}</h2>
<ul>${replies.map(
    ({ reply: { by, role, at, accepted, passes, floor, open, remark, key }, since }) =>
      html`<li>${own(say('witness.signed', { by, role, at }))} ${say(`witness.replied.${accepted}`)}${passes !== undefined && html` (${own([say(`proof.gate.${passes}`), ...(floor === undefined ? [] : [floor])].join(', '))})`}. ${say('witness.replied.since', { n: since })}${open.length > 0 && html`<br>${own(say('witness.signed.open', { open: open.join('; ') }))}`}${remark !== undefined && html`<br>${own(remark)}`}<br>${say('witness.signed.key')} <code>${keyFingerprint(key)}</code></li>`,
  )}</ul>
</section>
`;
