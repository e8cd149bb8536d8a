/** The names in a pattern file in, diagnostics for those that clash or lead nowhere out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { type YamlNode, type YamlText, yamlAt } from '../source/yaml-tree.ts';

export function nameFaults(file: string, root: YamlNode): readonly Diagnostic[] {
  return [...sameNames(file, root, 'sizes'), ...sameNames(file, root, 'parts'), ...ontoFaults(file, root)];
}

/** Names that differ only in capitals or signs lead to the same page address. */
function sameNames(file: string, root: YamlNode, what: 'sizes' | 'parts'): readonly Diagnostic[] {
  const firstByAddress = new Map<string, YamlText>();
  return textsUnder(root, what, 'name').flatMap((name) => {
    const address = name.text.text
      .trim()
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-');
    const first = firstByAddress.get(address);
    if (first === undefined) {
      firstByAddress.set(address, name);
      return [];
    }
    const labels = [{ span: first.span, text: 'the first' }];
    return [
      diagnose('file/same-name', { file, span: name.span, labels }, { what, name: name.text.text.trim() }),
    ];
  });
}

function ontoFaults(file: string, root: YamlNode): readonly Diagnostic[] {
  const parts = yamlAt(root, ['parts']);
  if (parts?.kind !== 'list') return [];
  return parts.items.flatMap((part, index) => {
    const onto = yamlAt(part, ['onto']);
    if (onto?.kind !== 'text' || onto.text.text === '') return [];
    const earlier = parts.items.slice(0, index).flatMap((before) => {
      const name = yamlAt(before, ['name']);
      return name?.kind === 'text' ? [name.text.text.trim()] : [];
    });
    const given = onto.text.text.trim();
    if (earlier.includes(given)) return [];
    return [
      diagnose('file/onto', { file, span: onto.span }, { given, nearest: nearest(given, earlier), earlier }),
    ];
  });
}

function textsUnder(root: YamlNode, list: string, key: string): readonly YamlText[] {
  const found = yamlAt(root, [list]);
  if (found?.kind !== 'list') return [];
  return found.items.flatMap((item) => {
    const value = yamlAt(item, [key]);
    return value?.kind === 'text' && value.text.text.trim() !== '' ? [value] : [];
  });
}
