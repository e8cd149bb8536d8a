/** What lies on the desk -> its page: the text with notes in its margin, and beside it all that is made of it. */

import type { CompiledSize } from '../compiled.ts';
import { escaped } from '../escaped.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { DIALECT_KEYS, DIALECT_NAMES } from '../site/dialect-names.ts';
import { DESK_ADDRESS, type DeskView, deskHref, type OpenFile } from './desk-view.ts';
import { countWords } from './fault-words.ts';
import { deskFrame, fresh, PASTE_ADDRESS } from './frame.ts';
import { bookletSheet, chartSheet, isLarge, wordSheet } from './made-sheets.ts';
import { rowSheet } from './row-sheet.ts';
import { sizeSheet } from './size-sheet.ts';
import { faultSummary, textSheet } from './text-sheet.ts';

export function layDesk(view: DeskView): string {
  const { open } = view;
  if (open === null)
    return deskFrame({
      title: 'Your desk',
      here: 'desk',
      main: `${choice(view)}\n${nothingOpen(view)}`,
      news: view.news,
    });
  const title = titleOf(open);
  const told = countWords(open.compiled.diagnostics);
  return deskFrame({
    title: `${told === null ? '' : `${told}: `}${title} – your desk`,
    here: 'desk',
    news: view.news,
    main: `${choice(view)}
<div class="sides">
<section class="side written" aria-labelledby="title">
${fresh('head', `<h1 id="title">${escaped(title)}</h1>\n<p class="path">${escaped(open.file)}</p>`)}
${fresh('told', faultSummary(open.text, open.compiled.diagnostics))}
${writingForm(open, view.token)}
${fresh('text', textSheet(open.text, open.compiled.diagnostics, open.writable))}
</section>
<div class="side made">
${madeSheets(open)}
</div>
</div>`,
  });
}

function titleOf({ compiled, file }: OpenFile): string {
  const title = compiled.pattern?.title ?? '';
  return title === '' ? file : title;
}

function choice(view: DeskView): string {
  const { files, open, asked } = view;
  const told = fresh('elsewhere', elsewhere(view));
  if (files.length === 0) return told;
  const current = open?.file ?? asked;
  const options = files.map(
    ({ file, title }) =>
      `<option value="${escaped(file)}"${file === current ? ' selected' : ''}>${escaped(title)} (${escaped(file)})</option>`,
  );
  const sizes = (open?.compiled.sizes ?? []).map(
    ({ slug, size }, i) =>
      `<option value="${escaped(slug)}"${i === open?.size ? ' selected' : ''}>${escaped(size.name)}</option>`,
  );
  const terms = DIALECT_KEYS.map(
    (key) =>
      `<option value="${key}"${key === open?.dialect ? ' selected' : ''}>${DIALECT_NAMES[key]}</option>`,
  );
  return `<form class="choice" method="get" action="${DESK_ADDRESS}" aria-label="What lies on the desk">
<div><label for="file">Pattern</label><select id="file" name="file" data-fresh>${options.join('')}</select></div>
<div><label for="size">Size</label><select id="size" name="size" data-fresh${sizes.length === 0 ? ' disabled' : ''}>${sizes.length === 0 ? '<option value="">none yet</option>' : sizes.join('')}</select></div>
<div><label for="terms">Words in</label><select id="terms" name="terms">${terms.join('')}</select></div>
<button type="submit" class="plainer">Show</button>
</form>
${told}`;
}

const MOST_NAMED = 8;

/** What keeps the site from being built beside what lies open. */
function elsewhere({ files, others, siteFault, open }: DeskView): string {
  const count = (errors: number): string => (errors === 1 ? '1 error' : `${errors} errors`);
  const named = [
    ...files.flatMap(({ file, title, errors }) =>
      errors === 0 || file === open?.file
        ? []
        : [`<a href="${escaped(deskHref(file))}">${escaped(title)}</a> (${count(errors)})`],
    ),
    ...others.flatMap(({ file, errors }) =>
      errors === 0
        ? []
        : [`<span class="path">${escaped(file)}</span> (${count(errors)}: <a href="/.faults/">which</a>)`],
    ),
  ];
  const more = named.length > MOST_NAMED ? ` and ${named.length - MOST_NAMED} more` : '';
  const wrong =
    named.length === 0
      ? ''
      : `<p class="not-yet">Not right yet: ${named.slice(0, MOST_NAMED).join(', ')}${more}.</p>`;
  const site =
    siteFault === null ? '' : `<p class="not-yet">The site could not be built: ${escaped(siteFault)}.</p>`;
  return `${wrong}${site}`;
}

function nothingOpen({ files, asked }: DeskView): string {
  const missing =
    asked === null
      ? ''
      : `<p>There is no <span class="path">${escaped(asked)}</span> any more. If you moved it, choose it again above; what you wrote here is kept until you save it.</p>`;
  const begin =
    files.length === 0
      ? `<p>There is no pattern yet. <a href="${PASTE_ADDRESS}">Paste instructions you have</a>, or start one in the terminal with <code>npm run -s rowfold -- new my-square</code>. It shows here by itself.</p>`
      : '';
  return `${fresh('head', '<h1 id="title">Your desk</h1>')}\n${fresh('text', `${missing}${begin}`)}`;
}

function writingForm({ file, text, stamp, writable }: OpenFile, token: string): string {
  if (!writable) return '';
  return `<details class="writing" id="writing">
<summary>Write here</summary>
<form id="write" method="post" action="${DESK_ADDRESS}save">
<input type="hidden" name="file" value="${escaped(file)}">
<input type="hidden" name="token" value="${escaped(token)}">
<input type="hidden" name="stamp" value="${escaped(stamp)}">
<label for="own-text">The text of the file</label>
<textarea id="own-text" name="text" rows="18" spellcheck="false" autocomplete="off" autocapitalize="off" wrap="soft">
${escaped(text)}</textarea>
<p id="unsaved" class="unsaved" hidden></p>
<div class="buttons"><button type="submit">Save</button><button type="button" class="plainer" id="take-theirs" hidden>Take what is in the file</button><button type="button" class="plainer" id="put-back" hidden>Put mine back</button></div>
</form>
</details>`;
}

interface Sheet {
  readonly id: string;
  readonly name: string;
  /** Null where there is nothing to make it of. */
  readonly inside: string | null;
}

/** Sheets that take longer to make than the text to read are left out of what is wanted soon. */
function madeSheets(open: OpenFile): string {
  const { compiled } = open;
  const { pattern } = compiled;
  const size = compiled.sizes[open.size] ?? null;
  const faulty = compiled.diagnostics.some(({ severity }) => severity === 'error');
  const made = (id: string, name: string, make: (pattern: Pattern, size: CompiledSize) => string): Sheet => ({
    id,
    name,
    inside: pattern === null || size === null ? null : worked(() => make(pattern, size)),
  });
  const sheets = [
    made('rows', 'Row by row', ({ terms }, of) => rowSheet(of, terms, open.text)),
    made('sizes', 'Sizes', (of) => sizeSheet(compiled, of, open.size)),
    ...(open.soon
      ? []
      : [
          made('chart', 'Chart', (_, of) => charts(open, of)),
          made('words', 'Words', (_, of) => wordSheet(of, open.dialect)),
          made('booklet', 'Booklet', (_, of) => (faulty ? WAITS : booklet(open, of))),
        ]),
  ];
  return `${fresh('made', size === null ? NOTHING : faulty ? HALFWAY : '')}
<nav aria-label="What is made of it"><ol class="trail sheets">${sheets.map(({ id, name }) => `<li><a href="#${id}">${name}</a></li>`).join('')}</ol></nav>
${sheets.map(sheetMarkup).join('\n')}`;
}

function sheetMarkup({ id, name, inside }: Sheet): string {
  return `<section class="made-sheet" id="${id}" data-fresh aria-labelledby="${id}-head"${inside === null ? ' hidden' : ''}><h2 id="${id}-head">${name}</h2>
<div>${inside ?? ''}</div></section>`;
}

const NOTHING = '<p class="quiet">Nothing can be worked yet: mend what is told beside the text first.</p>';
const HALFWAY = '<p class="quiet">There are errors. What stands here is worked as far as it goes.</p>';
const WAITS = '<p class="quiet">It is set once there are no errors.</p>';

/** A piece worked halfway may be beyond drawing or wording; the other sheets show what there is all the same. */
function worked(make: () => string): string {
  try {
    return make();
  } catch {
    return '<p class="quiet">This cannot be made before the errors are mended.</p>';
  }
}

function charts({ file, dialect, drawLarge }: OpenFile, size: CompiledSize): string {
  if (!isLarge(size) || drawLarge) return chartSheet(size, dialect);
  return `<p class="quiet">This chart is large and takes a while. <a href="${escaped(choiceHref(file, size, dialect))}&amp;large=yes">Draw it all the same</a>.</p>`;
}

function booklet({ file, dialect, drawLarge, booklet: pages }: OpenFile, size: CompiledSize): string {
  const href = `${DESK_ADDRESS}booklet.pdf${choiceHref(file, size, dialect).slice(DESK_ADDRESS.length)}`;
  if (!isLarge(size) || drawLarge) return bookletSheet(pages(), href);
  return `<p class="quiet">It is long and takes a while. <a href="${escaped(href)}">Make it as a PDF</a>.</p>`;
}

function choiceHref(file: string, { slug }: CompiledSize, dialect: string): string {
  return `${deskHref(file)}&size=${encodeURIComponent(slug)}&terms=${dialect}`;
}
