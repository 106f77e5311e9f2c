import type { Head } from '../record/envelope.ts';
import { html, type Markup, own } from './markup.ts';
import { mediaFigure } from './media-figure.ts';
import type { Telling } from './telling.ts';

/** Pictures that no check and no point names, then how far the records reach: what makes a later cut or change visible. */
export const recordPart = (heads: readonly Head[], telling: Telling): Markup => {
  const { say, media } = telling;
  // a chain has no gaps, so its end tells how many there are
  const n = heads.reduce((sum, { sequence }) => sum + sequence + 1, 0);
  const loose = [...media.homes].filter(([, home]) => home === '').map(([digest]) => digest);
  const many = media.leftOut.size;
  return html`${
    media.homes.size > 0 &&
    html`<section id="media">
<h2>${say('witness.media')}</h2>
<p>${say('witness.media.count', { n: media.included.size })}${many > 0 && html` ${say('witness.media.left', { n: many })}`}</p>
${loose.map((digest) => mediaFigure(digest, '', telling))}
</section>
`
  }<section id="chains">
<h2>${say('witness.chains')}</h2>
<p class="quiet">${say('witness.chains.about', { n })}</p>
<div class="wide" role="group" aria-label="${say('witness.chains')}" tabindex="0"><table>
<thead><tr><th scope="col">${say('witness.chains.writer')}</th><th scope="col">${say('witness.chains.records')}</th><th scope="col">${say('witness.chains.head')}</th></tr></thead>
<tbody>${heads.map(({ writer, sequence, hash }) => html`<tr><th scope="row">${own(writer)}</th><td>${sequence + 1}</td><td><code>${hash}</code></td></tr>`)}</tbody></table></div>
</section>
`;
};
