import { publicKeyOf } from '../../record/ed25519.ts';
import { keyFingerprint } from '../../record/fingerprint.ts';
import { toHex } from '../../record/hex.ts';
import { signReply } from '../../record/reply.ts';
import { exportReply } from '../../record/reply-file.ts';
import type { SeenFile } from '../seen-file.ts';
import { keepDrafts } from './drafts.ts';
import { commentsIn, statementIn } from './read-form.ts';
import { saveText } from './save-text.ts';

/*
 * What runs in the browser of the witness, and nowhere else: the one part of the file that has a clock and makes a key.
 * It shows what stands in the page hidden, and has no word of its own.
 */

const found = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;

const seen = JSON.parse(found('seen').textContent ?? '') as SeenFile;
const form = found<HTMLFormElement>('reply');
// in this page alone, never kept: a file opened later makes another
const secretKey = toHex(crypto.getRandomValues(new Uint8Array(32)));
let unsaved = false;

const field = (name: string): string => String(new FormData(form).get(name) ?? '');

/** The open points of what is answered to, where they are to be named. */
const showOpen = (): void => {
  const named = field('accepted') === 'with open points';
  for (const set of form.querySelectorAll<HTMLFieldSetElement>('fieldset.open')) {
    const asked = named && set.dataset.answers === field('answers');
    set.hidden = !asked;
    // what is not shown is not said
    set.disabled = !asked;
  }
};

const showCount = (): void => {
  found('comments').textContent = String(commentsIn(document).length);
};

const complain = (id: string | undefined): void => {
  for (const one of ['reply-name', 'reply-no-open', 'reply-broken']) found(one).hidden = one !== id;
};

const openAt = (hash: string): void => {
  const place = document.getElementById(hash.slice(1));
  const check = place?.closest('details');
  if (check instanceof HTMLDetailsElement) check.open = true;
};

const openAll = (): void => {
  for (const check of document.querySelectorAll('details')) check.open = true;
};

const answer = (): void => {
  found('reply-done').hidden = true;
  const statement = statementIn(document, form, seen, new Date().toISOString());
  if (statement.by === '' || statement.role === '') {
    complain('reply-name');
    form.querySelector<HTMLInputElement>(`[name=${statement.by === '' ? 'by' : 'role'}]`)?.focus();
    return;
  }
  if (statement.accepted === 'with open points' && statement.open.length === 0) {
    complain('reply-no-open');
    return;
  }
  const signed = signReply(statement, secretKey);
  const text = signed.ok ? exportReply(signed.value) : signed;
  if (!text.ok) {
    complain('reply-broken');
    return;
  }
  complain(undefined);
  const name = `reply-${seen.file.slice(0, 8)}-${publicKeyOf(secretKey).slice(0, 8)}.reply`;
  saveText(name, text.value);
  found('reply-file').textContent = name;
  found('reply-digits').textContent = keyFingerprint(publicKeyOf(secretKey));
  found<HTMLTextAreaElement>('reply-text').value = text.value;
  found('reply-done').hidden = false;
  found('reply-done').focus();
  unsaved = false;
};

keepDrafts(document, seen.file);
showOpen();
showCount();
form.hidden = false;
found('open-all').hidden = false;

document.addEventListener('input', () => {
  unsaved = true;
  showOpen();
  showCount();
});
form.addEventListener('submit', (event) => {
  event.preventDefault();
  answer();
});
form.addEventListener('click', ({ target }) => {
  if (!(target instanceof HTMLButtonElement) || !target.classList.contains('all')) return;
  for (const box of target.closest('fieldset')?.querySelectorAll<HTMLInputElement>('input') ?? [])
    box.checked = true;
});
found('open-all').addEventListener('click', openAll);
window.addEventListener('beforeprint', openAll);
window.addEventListener('hashchange', () => openAt(location.hash));
openAt(location.hash);
window.addEventListener('beforeunload', (event) => {
  if (unsaved) event.preventDefault();
});
