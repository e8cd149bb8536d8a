/** What kept a site from being built -> a page that lists it, and a banner for the pages of the last good site. */

import path from 'node:path';
import { DESK_ADDRESS, deskHref } from '../desk/desk-view.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { escaped } from '../escaped.ts';
import { FILES_FOLDER } from '../site/addresses.ts';
import type { BuildResult } from '../site/build-site.ts';
import type { ToldFile } from '../site/compile-patterns.ts';
import { PATTERN_FILE } from '../site/read-patterns.ts';
import { lineColumn } from '../source/span.ts';

export interface FaultPage {
  readonly html: string;
  readonly banner: string;
}

export function faultPage(result: Exclude<BuildResult, { kind: 'built' }>): FaultPage {
  if (result.kind !== 'faults') return page([`<p>${escaped(result.why)}.</p>`], 'The site was not built');
  const faults = result.files.flatMap((file) =>
    file.compiled.diagnostics.map((fault) => faultMarkup(fault, file)),
  );
  return page(faults, faults.length === 1 ? 'There is 1 fault' : `There are ${faults.length} faults`);
}

function page(entries: readonly string[], heading: string): FaultPage {
  const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${heading}</title>
<link rel="stylesheet" href="/${FILES_FOLDER}/site.css">
</head>
<body>
<main class="faults">
<h1>${heading}</h1>
<p>Mend the pattern and save it: this page is loaded again by itself. <a href="/">The last good site</a> stays as it was.</p>
${entries.join('\n')}
</main>
</body>
</html>
`;
  return {
    html,
    banner: `<p class="fault-banner"><a href="/.faults/">${heading}</a>. This is the last good page. <a href="${DESK_ADDRESS}">To your desk</a></p>`,
  };
}

function faultMarkup(fault: Diagnostic, { text }: ToldFile): string {
  const { line, column } = lineColumn(text, fault.span.start);
  const size = fault.sizes.length === 0 ? '' : ` (size ${escaped(fault.sizes.join(', '))})`;
  const written = text.split('\n')[line - 1]?.trim() ?? '';
  return `<section class="fault">
<h2>${escaped(fault.message)}${size}</h2>
<p><span class="label">${fault.severity}</span> ${place(fault.file, line)}, column ${column}</p>
${written === '' ? '' : `<blockquote><p>${escaped(written)}</p></blockquote>`}
<p>${escaped(fault.why)}</p>
<p><span class="label">Try:</span> ${escaped(fault.try)}</p>
</section>`;
}

/** Only a pattern can lie on the desk. */
function place(file: string, line: number): string {
  const words = `${escaped(file)}, line ${line}`;
  return path.posix.basename(file) === PATTERN_FILE
    ? `<a href="${escaped(deskHref(file))}#line-${line}">${words}</a>`
    : words;
}
