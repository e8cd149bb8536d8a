/** On every page: the light and the letters that a reader chose once are hers on the next page as well. */

import { keep, readKept } from './kept.ts';

const KEPT = 'rowfold looks';

/** Name of a choice -> values that change something; the first of each group is what the page has by itself. */
const CHOICES: Readonly<Record<string, readonly string[]>> = {
  light: ['light', 'dark'],
  letters: ['larger', 'largest'],
};

type Looks = Readonly<Record<string, string>>;

function isLooks(value: unknown): value is Looks {
  return (
    typeof value === 'object' &&
    value !== null &&
    Object.values(value).every((one) => typeof one === 'string')
  );
}

let looks = readKept(KEPT, isLooks) ?? {};
const page = document.documentElement;

/** Said of the whole page before it is read to its end, so that a dark page does not come up white. */
for (const [name, values] of Object.entries(CHOICES)) {
  const chosen = looks[name] ?? '';
  if (values.includes(chosen)) page.dataset[name] = chosen;
}

function take(): void {
  const boxes = [...document.querySelectorAll<HTMLInputElement>('.looks-choices input')];
  for (const box of boxes) {
    // Also where nothing was chosen: a browser may bring back what was checked when she last left the page.
    box.checked = box.value === looks[box.name] || (looks[box.name] === undefined && box.defaultChecked);
    box.addEventListener('change', () => {
      looks = { ...looks, [box.name]: box.value };
      keep(KEPT, looks);
    });
  }
  // From here on the style sheet goes by what is checked.
  for (const name of Object.keys(CHOICES)) delete page.dataset[name];
}

if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', take);
else take();
