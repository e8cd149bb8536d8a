/** The lines under a pasted text's sizes in, names and finished measures out: `S (M, L)`, `Small: 15 cm square`. */

import { sidesIn } from './read-measures.ts';
import type { Item } from './sorted-lines.ts';
import type { TranscribedSize } from './transcript.ts';

const SIZE_WORD =
  /^(?:one size|newborn|preemie|baby|infant|toddler|child|children|kids?|teen|youth|adult|women|woman|men|man|lady|ladies|girls?|boys?|unisex|junior|mini|tiny|petite|small|medium|large|extra[- ]large|extra[- ]small|short|long|x{0,5}s|s|m|l|x{0,5}l|\d+xl?|x[- ]?(?:small|large)|throw|lap|(?:twin|full|queen|king|single|double)(?:[- ]?(?:bed|size))?|crib|stroller|pram|cot(?: bed)?|s\/m|m\/l|l\/xl|\d{1,2}\s*[-–]\s*\d{1,2}\s*(?:m|mos?|mths?|months?|yrs?|years?)|\d{1,3}(?:\s*(?:mths?|months?|years?|yrs?))?|(?:child|children|kids?|toddler|baby|girls?|boys?|youth)\s+\d{1,2}\s*[-–]\s*\d{1,2}(?:\s*(?:m|mos?|mths?|months?|yrs?|years?))?|(?:adult|child|baby|toddler|extra|xtra|women[’']s|men[’']s|ladies)\s+(?:small|medium|large|s|m|l|xl))$/i;

export interface SizesRead {
  readonly sizes: readonly TranscribedSize[];
  /** Lines that the sizes do not say whole: kept as notes. */
  readonly rest: readonly Item[];
}

export function readSizes(items: readonly Item[]): SizesRead {
  let sizes: TranscribedSize[] = [];
  const rest: Item[] = [];
  for (const item of items) {
    const { text } = item.text;
    const listed = listIn(text.slice(MEASURED.exec(text)?.[0].length ?? 0));
    if (sizes.length === 0 && listed !== null) {
      sizes = listed.names.map((name) => ({ name, width: null, height: null, span: item.span }));
      if (listed.behind !== '') rest.push(item);
      continue;
    }
    const fitted = sizes.length === 0 ? fittedIn(text) : null;
    if (fitted !== null) {
      sizes = fitted.map((name) => ({ name, width: null, height: null, span: item.span }));
      rest.push(item);
      continue;
    }
    const named = namedSize(text);
    if (named !== null) {
      const known = sizes.findIndex(({ name }) => name.toLowerCase() === named.name.toLowerCase());
      const size = { name: named.name, ...(named.sides ?? { width: null, height: null }), span: item.span };
      if (known === -1) sizes.push(size);
      else sizes[known] = { ...size, name: sizes[known]?.name ?? named.name };
      if (!named.whole) rest.push(item);
      continue;
    }
    const measured = measuresIn(text);
    if (measured !== null && (sizes.length === 0 || sizes.length === measured.length)) {
      sizes = measured.map((side, i) => ({
        name: sizes[i]?.name ?? side,
        width: side,
        height: side,
        span: sizes[i]?.span ?? item.span,
      }));
      continue;
    }
    const sides = sizes.length === 0 && items.length === 1 ? sidesIn(text) : null;
    if (sides !== null) sizes = [{ name: 'one size', ...sides, span: item.span }];
    // The one size's own words often say more than its sides.
    if (sides === null || !/^\W*(?:approx\w*\.?\s*)?[\d.,\s]+(?:cm|in|mm|")?\s*(?:x|×|by|square)/i.test(text))
      rest.push(item);
  }
  // Sizes that would have one address are not told apart; then all of their words are kept.
  const addresses = new Set(sizes.map(({ name }) => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')));
  return sizes.length === 0 || addresses.size < sizes.length ? { sizes: [], rest: items } : { sizes, rest };
}

/** `Hand circumference:` before a list of sizes: what is measured of them. */
const MEASURED =
  /^(?:(?:finished|actual|to fit|fits)\s+)?(?:[a-z]+\s+)?(?:circumference|girth|length|width|chest|bust|foot|feet|head|waist|hand|hips?)\s*(?::|[–—-]\s)\s*/i;

/** `Head circumference: Child (Teen, Adult) 18 (20, 22)"`: the sizes are named with what they measure. */
export function namesSizes(text: string): boolean {
  const measured = MEASURED.exec(text)?.[0];
  return measured !== undefined && listIn(text.slice(measured.length)) !== null;
}

/** `Child (Woman, Man)`: nothing but a list of sizes. */
export function listsSizes(text: string): boolean {
  return listIn(text) !== null;
}

/** The names in a line that is nothing but a list of sizes; none for any other. */
export function sizesListed(text: string): readonly string[] {
  // `Sizes: S (M, L) to fit a foot 23.5 (25.5, 27.5) cm long`: told to be sizes, whatever else is said of them.
  const said = /^sizes?\s*[:–—-]?\s+/i.exec(text)?.[0] ?? '';
  const listed = listIn(text.slice(said.length));
  return listed === null || (listed.behind !== '' && said === '') ? [] : listed.names;
}

/** `S (M, L)`, `S(M:L)`, `small (medium, large)`, `S, M, L`, `6 [8, 10] years`. */
function listIn(text: string): { names: string[]; behind: string } | null {
  const bracketed = /^([^\s()[\],:][^()[\],:]{0,24}?)\s*[([]([^()[\]]{1,80})[)\]]\s*(.*)$/.exec(text);
  if (bracketed !== null) {
    const [, first = '', others = '', behind = ''] = bracketed;
    const unit = /^\s*(months?|mths?|mos?|years?|yrs?)\b/i.exec(behind)?.[1];
    const names = [first, ...others.split(/\s*[,:/]\s*/)].map((name) =>
      // `0-3 (3-6, 6-12) months`: a range alone is no size.
      withUnit(name.trim().replace(/\.$/, ''), unit),
    );
    if (
      names.length > 1 &&
      names.every((name) => SIZE_WORD.test(name)) &&
      !/^\s*(?:cm|in|mm|"|”)/i.test(behind)
    )
      return { names, behind: behind.replace(/^[.,;]$/, '') };
  }
  const names = text
    .replace(/\.$/, '')
    .split(/\s*(?:,|;|\band\b|&)\s*/)
    .filter((name) => name !== '');
  return names.length > 1 && names.every((name) => SIZE_WORD.test(name) && !/^\d+$/.test(name))
    ? { names, behind: '' }
    : null;
}

function withUnit(name: string, unit: string | undefined): string {
  return unit !== undefined && /^\d{1,2}\s*[-–]\s*\d{1,2}$/.test(name) ? `${name} ${unit}` : name;
}

/** `Small: 15 cm x 20 cm`, `Large – 30 cm square`. */
function namedSize(text: string): { name: string; sides: ReturnType<typeof sidesIn>; whole: boolean } | null {
  const found = /^(.{1,24}?)\s*(?::|=|\s[–—-])\s*(.+)$/.exec(text);
  const [, name, said] = found ?? [];
  if (name === undefined || said === undefined || !SIZE_WORD.test(name.trim())) return null;
  const sides = sidesIn(said);
  return { name: name.trim(), sides, whole: sides !== null && !/\bor\b|\bcirc|\bto fit\b/i.test(said) };
}

const FITTED =
  /\bto fit (?:(?:a )?(?:bust|chest|bust\/chest|head|hips?|waist)(?: of)? )(\d[\d.]*(?:\s*[-–]\s*\d[\d.]*)?)\s*[([]([\d.,:;\s–-]+)[)\]]\s*(cm|in|ins|mm|")/i;

/** `To fit bust 81 (86:91:97) cm`: where sizes have no names they are called by what they fit. */
function fittedIn(text: string): string[] | null {
  const [, first, others, unit] = FITTED.exec(text) ?? [];
  if (first === undefined || others === undefined || unit === undefined) return null;
  const shown = unit === '"' || unit === 'ins' ? 'in' : unit.toLowerCase();
  return [first, ...others.split(/[,:;]/)].map((amount) => `${amount.replace(/\s+/g, '')} ${shown}`);
}

/** `15 (20, 30) cm square`: a side for each size. */
function measuresIn(text: string): string[] | null {
  const found =
    /^(?:approx\w*\.?\s+)?(\d+(?:\.\d+)?)\s*[([]([\d.,:\s]+)[)\]]\s*(cm|in|mm|")\.?\s*square\b/i.exec(text);
  const [, first, others, unit] = found ?? [];
  if (first === undefined || others === undefined || unit === undefined) return null;
  return [first, ...others.split(/[,:]/)].map(
    (amount) => `${amount.trim()} ${unit === '"' ? 'in' : unit.toLowerCase()}`,
  );
}
