/** A pattern file's YAML with places in, plain values for the schema out, each read as the kind its key wants. */

import type { YamlNode, YamlText } from '../source/yaml-tree.ts';
import { type JsonSchema, within } from './json-schema.ts';

/**
 * A title of `1812` or `true` is text because a title is text, and `weight: "4"` a number because a weight is one.
 * A key with nothing after it is left out, as if it were not there.
 */
export function plainValue(node: YamlNode, schema: JsonSchema | null): unknown {
  if (node.kind === 'list') {
    return node.items.map((item, index) => {
      const wanted = schema === null ? null : within(schema, index);
      return isBlank(item) ? '' : plainValue(item, wanted);
    });
  }
  if (node.kind === 'map') {
    return Object.fromEntries(
      node.entries
        .filter((entry) => !isBlank(entry.value))
        .map((entry) => [
          entry.key,
          plainValue(entry.value, schema === null ? null : within(schema, entry.key)),
        ]),
    );
  }
  return plainText(node, schema);
}

/** Nothing at all, or YAML's sign for nothing. */
export function isBlank(node: YamlNode): boolean {
  return node.kind === 'text' && node.style === 'plain' && (node.text.text === '' || node.text.text === '~');
}

function plainText(node: YamlText, schema: JsonSchema | null): unknown {
  const kinds = (schema?.anyOf ?? (schema === null ? [] : [schema])).map((choice) => choice.type ?? 'string');
  if (kinds.includes('string')) return node.text.text;
  const wantsNumber = kinds.includes('number') || kinds.includes('integer');
  const written = node.text.text.trim();
  return wantsNumber && /^[+-]?\d+(?:\.\d+)?$/.test(written) ? Number(written) : node.value;
}
