/** Mistakes of the YAML itself in, diagnostics out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { MOST } from '../source/yaml.ts';
import type { YamlMistake } from '../source/yaml-tree.ts';
import { shown } from './place-words.ts';

export function yamlFault(file: string, mistake: YamlMistake): Diagnostic {
  const where = { file, span: mistake.span };
  switch (mistake.kind) {
    case 'tab':
      return diagnose('yaml/tab', where, {});
    case 'indent':
      return diagnose('yaml/indent', where, {});
    case 'colon':
      return diagnose('yaml/colon', where, {});
    case 'no colon':
      return diagnose('yaml/no-colon', where, { line: mistake.line });
    case 'not closed':
      return diagnose('yaml/not-closed', where, { character: mistake.character });
    case 'not opened':
      return diagnose('yaml/not-opened', where, { character: mistake.character });
    case 'same key':
      return diagnose(
        'yaml/same-key',
        { ...where, labels: [{ span: mistake.first, text: 'given here first' }] },
        { key: mistake.key },
      );
    case 'starts with':
      return diagnose('yaml/starts-with', where, { character: mistake.character });
    case 'hash':
      return diagnose('yaml/hash', where, { text: mistake.text });
    case 'outside':
      return diagnose('file/row-outside', where, { label: shown(mistake.text), count: 1 });
    case 'escape':
      return diagnose('yaml/escape', where, { text: mistake.text });
    case 'two documents':
      return diagnose('yaml/two-documents', where, {});
    case 'too much':
      return diagnose('yaml/too-much', where, MOST);
    case 'unreadable':
      return diagnose('yaml/unreadable', where, { text: mistake.text });
  }
}
