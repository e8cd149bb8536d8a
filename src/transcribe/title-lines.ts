/** Lines at the head of a pasted text in, its title and who designed it out. */

import { isTitled } from './part-headings.ts';
import { type TextLine, withoutOrnament } from './tidy-lines.ts';

/** A line that can be a title: short, no sentence, no greeting, no address. */
export function isTitle(line: TextLine): boolean {
  const text = withoutOrnament(line.text.text);
  if (text.length < 2 || text.length > 80 || text.split(' ').length > 12) return false;
  if (line.mark === 'bullet' && /^[a-z]/.test(text)) return false;
  // A title in capitals may end in a full stop, as old leaflets print it.
  if (
    /[,;:?]$/.test(text) ||
    (/\.$/.test(text) && text !== text.toUpperCase()) ||
    /https?:|www\.|@/.test(text) ||
    line.cells.length > 1
  )
    return false;
  if (/^(?:hi|hello|dear|hey|thanks|thank you|love|best|regards|cheers)\b/i.test(text)) return false;
  return line.mark === 'heading' || line.gap || isTitled(text);
}

/** `by Ann Example`, `Designed by …`, `A pattern by …`, `Design: …`; null for any other line. */
export function designerIn(text: string): string | null {
  const found =
    /^(?:(?:(?:a|an|this)\s+)?(?:(?:free|crochet|amigurumi|original|new)\s+){0,3}(?:pattern|design|designed|written|created)\s+by:?|by:?|designer:|design:|(?:pattern|design)\s+(?:&|\+|and)\s+(?:photos?|photography|pictures|images):)\s+(.+)$/i.exec(
      text,
    );
  const name = found?.[1]?.replace(/[.\s]+$/, '');
  return name !== undefined && isName(name) ? name : null;
}

/** `Marram Coaster by Ann Example` -> both; null where nobody is named. */
export function titleAndDesigner(text: string): { title: string; designer: string; at: number } | null {
  const found = /^(.{2,60}?),?\s+(?:designed\s+)?by\s+(.+)$/i.exec(text);
  const [, title, designer] = found ?? [];
  if (title === undefined || designer === undefined || !isName(designer)) return null;
  return { title, designer, at: text.length - designer.length };
}

/** `Sea Mat (UK terms)`: where the title ends and what stands in brackets behind it begins. */
export function bracketBehind(text: string): { titleEnd: number; start: number; end: number } | null {
  const found = /^(.{2,60}?)\s*[([]([^()[\]]+)[)\]]$/.exec(text);
  const [, title, inside] = found ?? [];
  if (title === undefined || inside === undefined) return null;
  return { titleEnd: title.length, start: text.length - 1 - inside.length, end: text.length - 1 };
}

function isName(text: string): boolean {
  return (
    text.length <= 60 &&
    text.split(' ').length <= 6 &&
    /^\p{Lu}/u.test(text) &&
    isTitled(text.replace(/\b(?:van|de|der|von|le|la)\b/g, 'of'))
  );
}
