/** A text in, the same as YAML reads it back out: plain where that is safe, in quotes where it is not. */

/** Plain words that YAML takes for something other than text. */
const OTHERWISE =
  /^(?:true|false|yes|no|on|off|null|~|y|n|[-+]?[\d.][\d._,eE+-]*|0x[\da-f]+|\d{4}-\d{2}-\d{2}.*)$/i;

/** For the value of a key or an entry of a list; `flow` within braces or brackets, where commas part entries. */
export function yamlWords(text: string, flow = false): string {
  const safe = flow ? /^[A-Za-z0-9(%][^\n:#,[\]{}"'\\]*$/ : /^[A-Za-z0-9(][^\n]*$/;
  const plain =
    safe.test(text) &&
    !/:(?:\s|$)|\s#|\s$/.test(text) &&
    !OTHERWISE.test(text) &&
    !/[^\x20-\x7e\u00a1-\ud7ff\ue000-\ufdcf\ufdf0-\ufffc]/.test(text);
  return plain ? text : JSON.stringify(text);
}
