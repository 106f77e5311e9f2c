import type { Problem } from '../../quantity/problem.ts';
import { makeCatalogue, type Translation } from '../../text/index.ts';
import { sentenceOf } from '../failure.ts';
import type { Way } from './hall-ports.ts';
import { pairingPageText } from './pairing-page.text.ts';

const words = makeCatalogue([pairingPageText]);

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (mark) => marks[mark] ?? mark);

export interface PairingPage {
  readonly way: Way;
  readonly code: string;
  readonly name: string;
  /** Book that is to be opened once the device has joined. */
  readonly book: string;
  readonly problems: readonly Problem[];
  /** The language of whoever holds the device, where it is not English. */
  readonly translation: Translation | null;
}

/**
 * The one page for a device that has not joined: a plain form without a script, so that nothing of the program is
 * handed out before.
 */
export const pairingPage = ({ way, code, name, book, problems, translation }: PairingPage): string => {
  const lang = translation?.language ?? 'en';
  const own = words.translated(translation ?? undefined);
  const say = (key: keyof typeof pairingPageText.en): string => escaped(own.say(key, {}, lang));
  const told = problems.map(
    (problem) => `<p class="problem">${escaped(sentenceOf(problem, translation))}</p>`,
  );
  return `<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${say('pairing.title')}</title>
<link rel="stylesheet" href="/join.css">
</head>
<body>
<main>
<h1>${say('pairing.title')}</h1>
<p>${say('pairing.about')}</p>
${way === 'plain' ? `<p class="problem">${say('pairing.plain')}</p>` : ''}
<div role="alert">${told.join('')}</div>
<form method="post" action="/join">
<input type="hidden" name="book" value="${escaped(book)}">
<label for="code">${say('pairing.code')}</label>
<input id="code" class="code" name="code" value="${escaped(code)}" required maxlength="40" autocomplete="off" autocapitalize="characters" spellcheck="false">
<label for="name">${say('pairing.name')}</label>
<span class="quiet" id="hint">${say('pairing.name.hint')}</span>
<input id="name" name="name" value="${escaped(name)}" required maxlength="60" autocomplete="off" aria-describedby="hint">
<button type="submit">${say('pairing.join')}</button>
</form>
</main>
</body>
</html>
`;
};
