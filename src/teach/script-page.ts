/** A script and its moments to pause in, one page of HTML out that can be printed large or read beside the camera. */

import { escaped } from '../escaped.ts';
import type { Pause } from './pauses.ts';
import type { Script, ScriptBlock } from './script.ts';
import { paragraphsOf, pausesAt } from './script-text.ts';

/** A file of its own, which asks for nothing else. */
export function scriptPage(script: Script, pauses: readonly Pause[]): string {
  const { title, size, terms, opening, blocks, closing } = script;
  const parts = blocks.map((block, i) => {
    const heading = block.part === blocks[i - 1]?.part ? '' : `<h2>${escaped(block.part)}</h2>\n`;
    return heading + blockMarkup(block, pausesAt(block, pauses));
  });
  return `<!doctype html>
<html lang="${terms === 'US' ? 'en-US' : 'en-GB'}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escaped(`${title}, ${size}: script`)}</title>
<style>
${STYLE}</style>
</head>
<body>
<h1>${escaped(title)}</h1>
<p class="which">Size ${escaped(size)}, to be read aloud in ${terms} terms. What stands under “Pause” is for you alone.</p>
<section>
${paragraphs(opening)}
</section>
${parts.join('\n')}
${closing.length === 0 ? '' : `<section>\n${paragraphs(closing)}\n</section>\n`}</body>
</html>
`;
}

function blockMarkup(block: ScriptBlock, pauses: readonly Pause[]): string {
  const { heading } = block;
  return `<section>
${heading === null ? '' : `<h3>${escaped(heading)}</h3>\n`}<div class="said">
${paragraphs(paragraphsOf(block))}
</div>
${pauses.length === 0 ? '' : `<div class="pauses">\n<p>Pause</p>\n<ul>\n${pauses.map(({ why }) => `<li>${escaped(why)}</li>`).join('\n')}\n</ul>\n</div>\n`}</section>`;
}

function paragraphs(sentences: readonly string[]): string {
  return sentences.map((sentence) => `<p>${escaped(sentence)}</p>`).join('\n');
}

/** Large letters, and no row over two sheets. */
const STYLE = `:root { font: 1.5rem/1.5 Georgia, serif; color: #201c18; background: #fffdf9; }
body { max-width: 62rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.7em; line-height: 1.2; margin: 0.5em 0 0.2em; }
h2 { font-size: 1.3em; margin: 1.2em 0 0; }
h3 { font-size: 0.75em; letter-spacing: 0.05em; text-transform: uppercase; margin: 0 0 0.3em; font-family: Arial, sans-serif; }
p { margin: 0 0 0.4em; }
.which { font: 0.75em/1.4 Arial, sans-serif; }
section { padding: 0.8em 0; border-bottom: 1px solid #b9ad9c; break-inside: avoid; }
.pauses { font: 0.65em/1.4 Arial, sans-serif; margin: 0.4em 0 0; padding: 0 0 0 0.8em; border-left: 0.3em solid #7d1f2d; }
.pauses p { margin: 0; font-weight: bold; }
ul { margin: 0; padding: 0; list-style: none; }
li { margin: 0.3em 0 0; }
@page { margin: 18mm; }
@media (min-width: 60rem) {
  section:has(.pauses) { display: grid; grid-template-columns: 1fr 15rem; column-gap: 1.5rem; align-items: start; }
  section:has(.pauses) h3 { grid-column: 1 / -1; }
  section .pauses { margin: 0.3em 0 0; }
}
@media (prefers-color-scheme: dark) {
  :root { color: #efe7da; background: #1d1915; }
  section { border-color: #5c5145; }
  .pauses { border-color: #e89aa4; }
}
@media print {
  :root { font-size: 16pt; color: #000; background: #fff; }
  body { max-width: none; padding: 0; }
}
`;
