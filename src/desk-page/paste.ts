/** On the page for pasted instructions: they are read as soon as they stand there. */

import { ask, fieldsOf, latest, pageIn, say, whenQuiet } from './ask-server.ts';
import { putIn } from './put-in.ts';

const QUIET_MS = 250;

const form = document.querySelector<HTMLFormElement>('#paste');
const area = document.querySelector<HTMLTextAreaElement>('#pasted');
const name = document.querySelector<HTMLInputElement>('#name');

/** Until she names the folder herself its name follows the title. */
let named = false;

const read = latest(async () => {
  if (form === null || name === null) return;
  const fields = fieldsOf(form);
  fields.set('do', 'read');
  if (!named) fields.delete('name');
  const { status, text } = await ask(form.action, fields);
  if (status !== 200) return refuse(text.trim());
  const page = pageIn(text);
  putIn(page);
  if (!named) name.value = page.querySelector<HTMLInputElement>('#name')?.value ?? '';
  const told = document.querySelector('#became strong')?.textContent;
  if (told !== undefined && told !== null) say(`Read: ${told}`);
});

function refuse(words: string): void {
  const place = document.querySelector('#refused');
  if (place !== null) place.textContent = words;
  say(words);
}

const soon = whenQuiet(QUIET_MS, read);
area?.addEventListener('input', soon);
name?.addEventListener('input', () => {
  named = name.value !== '';
  soon();
});
form?.addEventListener('submit', async (event) => {
  event.preventDefault();
  const { submitter } = event;
  const keeps = submitter instanceof HTMLButtonElement && submitter.value === 'keep';
  if (!keeps) return read();
  const fields = fieldsOf(form);
  fields.set('do', 'keep');
  const { status, url, text } = await ask(form.action, fields);
  if (status === 200) location.assign(url);
  else if (status === 409) putIn(pageIn(text));
  else refuse(text.trim());
});
// What a browser put back of an earlier visit is read as well.
if (area !== null && area.value.trim() !== '') read();
