/** Pasted instructions -> the page that shows the pattern file they become, and asks what to keep it as. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { escaped } from '../escaped.ts';
import { lineMap, placeOf } from '../source/line-map.ts';
import type { ListedPieces } from '../transcribe/listing.ts';
import { countWords, faultNote } from './fault-words.ts';
import { deskFrame, fresh, PASTE_ADDRESS } from './frame.ts';
import { faultSummary, textSheet } from './text-sheet.ts';

export interface PasteView {
  readonly pasted: string;
  /** Null where nothing was pasted yet. */
  readonly read: ReadPaste | null;
  /** The name of the folder it would be kept in. */
  readonly name: string;
  /** Why it was not kept, in words. */
  readonly refused: string | null;
  readonly folder: string;
  readonly token: string;
}

export interface ReadPaste {
  /** The pattern file it becomes, and what the check says of it. */
  readonly text: string;
  readonly faults: readonly Diagnostic[];
  readonly listed: readonly ListedPieces[];
  /** What only its designer can settle, by its place in the pasted text. */
  readonly asked: readonly Diagnostic[];
}

export function layPaste(view: PasteView): string {
  const { pasted, read, name, refused, folder, token } = view;
  return deskFrame({
    title: 'Paste instructions – your desk',
    here: 'paste',
    news: null,
    main: `<h1>Paste instructions</h1>
<p class="about">From a page, a document or an email, as they stand. They are read as you paste, and nothing is kept until you say so.</p>
<form id="paste" method="post" action="${PASTE_ADDRESS}">
<input type="hidden" name="token" value="${escaped(token)}">
<div class="sides">
<div class="side written">
<label class="field-name" for="pasted">Your instructions</label>
<textarea id="pasted" name="pasted" rows="16" spellcheck="false" autocomplete="off">
${escaped(pasted)}</textarea>
<div class="buttons"><button type="submit" class="plainer" name="do" value="read">Read it</button></div>
${fresh('recognised', read === null ? '' : recognised(read, pasted))}
</div>
<div class="side made">
${fresh('became', read === null ? '<p class="quiet">The pattern file appears here.</p>' : became(read))}
<div class="keep">
<label class="field-name" for="name">Keep it in the folder</label>
<p class="keep-name"><span class="path">${escaped(folder)}/</span><input type="text" id="name" name="name" value="${escaped(name)}" autocomplete="off" spellcheck="false" aria-describedby="keep-hint"></p>
<p class="hint" id="keep-hint">Small letters, digits and hyphens: it becomes the address of the pattern's page. A pattern that is there already is left alone.</p>
${fresh('refused', refused === null ? '' : `<p class="unsaved" role="alert">${escaped(refused)}</p>`)}
<div class="buttons"><button type="submit" name="do" value="keep">Keep as a new pattern</button></div>
</div>
</div>
</div>
</form>`,
  });
}

function recognised({ listed, asked }: ReadPaste, pasted: string): string {
  const map = lineMap(pasted);
  const questions = asked.map(
    (fault) =>
      `<li><p class="quiet">Line ${placeOf(map, fault.span.start).line} as pasted</p>${faultNote(fault)}</li>`,
  );
  const pieces = listed.map(
    ({ title, entries }) => `<h2>${escaped(title)}</h2>
<table class="figures"><thead><tr><th scope="col">Line</th><th scope="col">Taken for</th><th scope="col">What it says</th></tr></thead>
<tbody>${entries
      .map(
        ({ lines, kind, words }) =>
          `<tr><td>${escaped(lines)}</td><td>${escaped(kind === '' ? 'words' : kind)}</td><td>${escaped(words)}</td></tr>`,
      )
      .join('\n')}</tbody></table>`,
  );
  const settle = questions.length === 0 ? '' : `<h2>For you to settle</h2><ul>${questions.join('\n')}</ul>`;
  return `${settle}\n${pieces.join('\n')}`;
}

function became({ text, faults }: ReadPaste): string {
  return `<h2 id="became-head">The pattern file it becomes</h2>
<div data-count="${escaped(countWords(faults) ?? 'no faults')}">${faultSummary(text, faults)}</div>
${textSheet(text, faults)}`;
}
