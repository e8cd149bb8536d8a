/** On the desk: everything is new when the file is saved, wherever that is done; and what is written in the page is shown before it is saved. */

import { keep, readKept } from '../reader/kept.ts';
import { ask, fieldsOf, latest, pageIn, say, whenQuiet } from './ask-server.ts';
import { isDraft } from './draft.ts';
import { findWords } from './find-words.ts';
import { listen } from './listen.ts';
import { putIn } from './put-in.ts';

const TYPING_QUIET_MS = 250;

const form = document.querySelector<HTMLFormElement>('#write');
const writing = document.querySelector<HTMLDetailsElement>('#writing');
const area = document.querySelector<HTMLTextAreaElement>('#own-text');
const stamp = form?.querySelector<HTMLInputElement>('[name="stamp"]') ?? null;
const unsaved = document.querySelector<HTMLElement>('#unsaved');
const theirs = document.querySelector<HTMLButtonElement>('#take-theirs');
const putBack = document.querySelector<HTMLButtonElement>('#put-back');
const file = form?.querySelector<HTMLInputElement>('[name="file"]')?.value ?? '';
const draftKey = `rowfold draft ${file}`;

/** What the file holds, and what she wrote that was taken away. */
let inFile = area?.value ?? '';
let inFileStamp = stamp?.value ?? '';
let taken: string | null = null;

const written = (): boolean => area !== null && area.value !== inFile;

const refresh = latest(async (isStale) => {
  const query = new URLSearchParams(location.search);
  query.set('soon', 'yes');
  const { text } = await ask(`${location.pathname}?${query}`, null);
  const page = pageIn(text);
  const newText = page.querySelector<HTMLTextAreaElement>('#own-text')?.value;
  const newStamp = page.querySelector<HTMLInputElement>('#write [name="stamp"]')?.value ?? '';
  const clean = !written();
  takeToken(page);
  // The form is there or not by what the file is.
  if ((newText === undefined) !== (area === null)) {
    if (clean) return location.reload();
  }
  if (newText !== undefined && area !== null && stamp !== null) {
    const changed = newStamp !== inFileStamp;
    if (clean && area.value !== newText) {
      const { selectionStart, selectionEnd, scrollTop } = area;
      area.value = newText;
      area.setSelectionRange(selectionStart, selectionEnd);
      area.scrollTop = scrollTop;
    }
    inFile = newText;
    inFileStamp = newStamp;
    if (clean) stamp.value = newStamp;
    else if (changed && area.value !== newText) tellClash();
  }
  // What is being written is what she looks at.
  if (written()) return look();
  show(page);
  tellState();
  if (isStale()) return;
  const whole = await ask(`${location.pathname}${location.search}`, null);
  if (!written()) show(pageIn(whole.text));
});

const look = latest(async (isStale) => {
  if (form === null || !written()) return;
  const fields = fieldsOf(form);
  for (const [name, value] of new URLSearchParams(location.search))
    if (name !== 'file') fields.set(name, value);
  for (const soon of ['yes', 'no']) {
    fields.set('soon', soon);
    const { status, text } = await ask(location.pathname, fields);
    if (status === 200 && written()) show(pageIn(text));
    tellState();
    if (isStale()) return;
  }
});

/** A server that was started anew has another. */
function takeToken(page: Document): void {
  const newer = page.querySelector<HTMLInputElement>('#write [name="token"]');
  const mine = form?.querySelector<HTMLInputElement>('[name="token"]');
  if (newer !== null && mine) mine.value = newer.value;
}

function show(page: Document): void {
  putIn(page);
  const told = document.querySelector('#told strong')?.textContent ?? '';
  if (told !== '') say(told);
}

function tellState(): void {
  if (unsaved === null) return;
  if (written()) {
    if (unsaved.hidden) unsaved.textContent = 'Not saved yet. What you see is what you have written.';
  } else {
    if (theirs !== null) theirs.hidden = true;
    unsaved.textContent = '';
  }
  unsaved.hidden = unsaved.textContent === '';
}

/** Both texts stay: hers in the field, the other in the file. */
function tellClash(): void {
  if (unsaved === null || theirs === null) return;
  unsaved.textContent =
    'The file was changed elsewhere while you wrote here. Nothing is lost: save yours over it, or take what is in the file.';
  unsaved.hidden = false;
  theirs.hidden = false;
  say(unsaved.textContent);
  // Saving now is said over the newer text, knowingly.
  if (stamp !== null) stamp.value = inFileStamp;
}

/** Kept with what it was written over, which may be changed before it is put back. */
function keepDraft(): void {
  keep(draftKey, written() ? { text: area?.value ?? '', stamp: stamp?.value ?? '' } : null);
}

form?.addEventListener('submit', async (event) => {
  event.preventDefault();
  if (area === null || stamp === null || unsaved === null) return;
  const text = area.value;
  const fields = fieldsOf(form);
  fields.set('by', 'script');
  const { status, text: answer } = await ask(form.action, fields).catch(() => ({ status: 0, text: '' }));
  if (status === 200) {
    inFile = text;
    inFileStamp = answer;
    stamp.value = answer;
    taken = null;
    if (putBack !== null) putBack.hidden = true;
    keepDraft();
    unsaved.hidden = true;
    tellState();
    say('Saved.');
    return;
  }
  if (status === 409) return refresh();
  unsaved.textContent =
    status === 0
      ? 'It could not be saved: the server in the terminal has ended. Start it again; what you wrote stays here.'
      : `It was not saved. ${answer.trim()}`;
  unsaved.hidden = false;
  say(unsaved.textContent);
});

const lookSoon = whenQuiet(TYPING_QUIET_MS, () => (written() ? look() : refresh()));
area?.addEventListener('input', () => {
  keepDraft();
  tellState();
  lookSoon();
});
area?.addEventListener('keydown', (event) => {
  if (event.key !== 's' || !(event.ctrlKey || event.metaKey)) return;
  event.preventDefault();
  form?.requestSubmit();
});
theirs?.addEventListener('click', () => {
  if (area === null || stamp === null) return;
  taken = area.value;
  area.value = inFile;
  stamp.value = inFileStamp;
  theirs.hidden = true;
  if (putBack !== null) putBack.hidden = false;
  area.focus();
  keepDraft();
  refresh();
});
putBack?.addEventListener('click', () => {
  if (area === null || taken === null || putBack === null) return;
  area.value = taken;
  taken = null;
  putBack.hidden = true;
  area.focus();
  keepDraft();
  look();
});

const draft = readKept(draftKey, isDraft);
if (draft !== null && draft.text !== inFile && area !== null && stamp !== null && writing !== null) {
  writing.open = true;
  area.value = draft.text;
  if (draft.stamp !== inFileStamp) tellClash();
  else if (unsaved !== null) {
    unsaved.textContent = 'What you had written here and not saved was put back.';
    unsaved.hidden = false;
  }
  look();
}
document.body.classList.add('lively');
document.querySelector('#text')?.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest<HTMLButtonElement>('button[data-line]') : null;
  if (button === null || area === null || writing === null) return;
  writing.open = true;
  const { line, from, to } = button.dataset;
  findWords(area, { line: Number(line), from: Number(from), to: Number(to) });
});
listen({ saved: refresh, built: refresh });
