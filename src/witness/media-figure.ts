import { plainType } from '../media/index.ts';
import { base64 } from './base64.ts';
import { html, type Markup, own } from './markup.ts';
import type { Telling } from './telling.ts';

const shortDigest = (digest: string): string => digest.slice(0, 12);

/**
 * A picture, film, sound or document that was taken of something. One that is not in the file is named with the reason, and
 * one that stands elsewhere in it is led to: each is in it once.
 */
export const mediaFigure = (digest: string, home: string, telling: Telling): Markup => {
  const { say, media } = telling;
  const said = media.said.get(digest);
  const bytes = media.included.get(digest);
  const name = said?.caption ?? said?.name ?? say('witness.media.nameless', { digest: shortDigest(digest) });
  if (said === undefined || bytes === undefined) {
    const why = said === undefined ? 'unrecorded' : (media.leftOut.get(digest) ?? 'absent');
    return html`<p class="left-out">${own(name)}: ${say(`witness.media.${why}`)} <code>${digest}</code></p>`;
  }
  if (media.homes.get(digest) !== home) {
    return html`<p><a href="#m-${digest}">${own(name)}</a></p>`;
  }
  const type = plainType(said.mediaType);
  const address: Markup = { markup: `data:${type};base64,${base64(bytes)}` };
  const shown = type.startsWith('image/')
    ? html`<img src="${address}" alt="${name}">`
    : type.startsWith('video/')
      ? html`<video controls preload="metadata" src="${address}" aria-label="${name}"></video>`
      : type.startsWith('audio/')
        ? html`<audio controls preload="metadata" src="${address}" aria-label="${name}"></audio>`
        : html`<a download="${said.name ?? shortDigest(digest)}" href="${address}">${say('witness.media.save')}</a>`;
  const moment = said.moment === undefined ? '' : say('witness.media.moment', { moment: said.moment });
  return html`<figure id="m-${digest}">${shown}<figcaption>${own(name)}, ${own(said.by)}${moment !== '' && html`, ${own(moment)}`} <code title="${digest}">${shortDigest(digest)}</code></figcaption></figure>`;
};
