/** On the list: how many patterns fit what is chosen is said, and the choice stands in the address, to be kept or passed on. */

import { found } from './markup.ts';

const finder = found('.finder');
const told = found('#find-told');
const all = found<HTMLButtonElement>('#find-all');
const choices = [...finder.querySelectorAll('select')];
const entries = [...document.querySelectorAll('.shelf > li')];

const asked = new URLSearchParams(location.search);
for (const choice of choices) {
  const value = asked.get(choice.name);
  if (value !== null && [...choice.options].some((option) => option.value === value)) choice.value = value;
  choice.addEventListener('change', () => tell());
}
all.addEventListener('click', () => {
  for (const choice of choices) choice.value = '';
  tell();
  choices[0]?.focus();
});
// What a browser brings back when she returns is there only after the page has loaded.
addEventListener('pageshow', () => tell());
tell();

/** What is hidden is decided by the style sheet alone. */
function tell(): void {
  const chosen = choices.filter(({ value }) => value !== '');
  const shown = entries.filter((entry) => entry.checkVisibility()).length;
  all.hidden = chosen.length === 0;
  if (chosen.length === 0) told.textContent = '';
  else if (shown === 0) told.textContent = 'Nothing here is all of that. Choose a little less.';
  else told.textContent = `${shown} of ${entries.length} shown`;
  for (const head of document.querySelectorAll<HTMLElement>('.list-head'))
    head.hidden = ![...(head.nextElementSibling?.children ?? [])].some((entry) => entry.checkVisibility());
  const query = new URLSearchParams(chosen.map(({ name, value }) => [name, value])).toString();
  history.replaceState(history.state, '', query === '' ? location.pathname : `?${query}`);
}
