/** Abbreviations and names of stitches in printed words -> where each stands. */

/** Whole words, the longest first, with a capital where a sentence begins and an s for more than one. */
export function anyOf(abbreviations: readonly string[]): RegExp {
  const forms = [...new Set(abbreviations)]
    .sort((a, b) => b.length - a.length)
    .map((abbr) => {
      const [first = '', rest] = [abbr.charAt(0), abbr.slice(1)];
      const letter = first === first.toUpperCase() ? escaped(first) : `[${first}${first.toUpperCase()}]`;
      // `3dc` is three dc, but `13-dc cl` is no `3-dc cl`.
      return `${/\d/.test(first) ? '(?<!\\d)' : ''}${letter}${escaped(rest)}`;
    });
  return new RegExp(`(?<![\\p{L}])(?:${forms.join('|')})s?(?![\\p{L}\\d])`, 'gu');
}

/** The one of the words that stands there in one of its forms. */
export function wordFound(found: string, meanings: ReadonlyMap<string, unknown>): string | null {
  const small = found.charAt(0).toLowerCase() + found.slice(1);
  const forms = [found, small, found.replace(/s$/, ''), small.replace(/s$/, '')];
  return forms.find((each) => meanings.has(each)) ?? null;
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
