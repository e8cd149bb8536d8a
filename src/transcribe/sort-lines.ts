/** The lines of a pasted text in, each put where it belongs in a pattern out: one walk from the first line to the last. */

import { definingSentence, definitionBehind, definitionIn } from './definition-lines.ts';
import { findHeading, type Heading } from './headings.ts';
import { isChainRule, isInstruction, isProse, namesWork } from './instruction-words.ts';
import { sliceText, trimText } from './mapped-pieces.ts';
import { headingBefore, makeIn, partHeading } from './part-headings.ts';
import { listsSizes, namesSizes } from './read-sizes.ts';
import { namedTerms, onlyStatesTerms } from './read-terms.ts';
import { rowLabel } from './row-labels.ts';
import { sortPageLine, sortTitle } from './sort-page.ts';
import { addRow, addWork, keepPending, openPart, sortInPart, startsWork } from './sort-work.ts';
import type { SortedLines } from './sorted-lines.ts';
import { listsAbbreviations } from './stitch-entries.ts';
import { isSupplyLine } from './supply-lines.ts';
import { asTableRow } from './table-rows.ts';
import type { TextLine } from './tidy-lines.ts';
import { designerIn } from './title-lines.ts';
import { isListState, itemOf, newWalk, put, type State, type Walk } from './walk.ts';

export function sortLines(lines: readonly TextLine[]): SortedLines {
  const walk = newWalk(lines);
  for (const [index, line] of lines.entries()) sortLine(walk, line, index);
  keepPending(walk);
  return walk;
}

function sortLine(walk: Walk, line: TextLine, index: number): void {
  if (line.tellsStitch === true) {
    put(walk, 'specials', itemOf(line, line.text));
    return;
  }
  if (sortPageLine(walk, index) || sortRow(walk, line, index) || sortTitle(walk, line)) return;
  if (walk.state === 'part' && walk.parts.length > 0 && FOR_SIZES.test(line.text.text)) {
    addWork(walk, line, 'instruction', null);
    return;
  }
  const heading = headingOf(line);
  if (heading !== null && isHeadingHere(walk, line, heading)) {
    openSection(walk, line, heading);
    return;
  }
  if (walk.parts.length === 0 && !isOfStitches(walk.state) && listsAbbreviations(line.text)) {
    put(walk, 'abbreviations', itemOf(line, line.text));
    return;
  }
  if (sortHeaded(walk, line) || sortDefinition(walk, line)) return;
  const part = partHeading(walk.lines, index, isListState(walk.state), isOfStitches(walk.state));
  if (part !== null) openPart(walk, line, part);
  else if (sortAnywhere(walk, line)) return;
  else if (startsWork(walk, index)) addWork(walk, line, 'instruction', null);
  else sortByState(walk, line);
}

/** A heading with its foundation on the same line; behind other work only where that is fastened off. */
function sortHeaded(walk: Walk, line: TextLine): boolean {
  const before = walk.parts.at(-1)?.lines.at(-1);
  const apart = before === undefined || /\b(?:fasten|break) off\b/i.test(before.text.text);
  const found = apart && line.cells.length < 2 ? headingBefore(line.text.text, before !== undefined) : null;
  if (found === null || isOfStitches(walk.state)) return false;
  openPart(walk, line, found.heading);
  addWork(walk, line, 'instruction', null, trimText(sliceText(line.text, found.restAt)));
  return true;
}

/** `Shell (sh): 5 dc in same st`, `dec = sc2tog` outside of the lists where such lines belong. */
function sortDefinition(walk: Walk, line: TextLine): boolean {
  const told = line.cells.length > 1 ? null : definingSentence(line.text, walk.rowWords);
  if (told !== null) {
    put(walk, 'specials', itemOf(line, told));
    return true;
  }
  if (walk.state === 'abbreviations' || walk.state === 'specials' || line.cells.length > 1) return false;
  const found = definitionIn(line.text.text, walk.rowWords, walk.parts.length > 0);
  if (found === null) return false;
  put(walk, found.bucket, itemOf(line, found.at === 0 ? line.text : sliceText(line.text, found.at)));
  return true;
}

/** `Adult only:`, `Sizes M and L only`, `Both sizes:` among the rows: for which sizes those under it are. */
const FOR_SIZES = /^(?:(?:all|both) sizes(?: only)?|(?:for )?(?:sizes? )?[^.:;()]{1,40}\bonly)\s*[:.]?$/i;

/** Where a name on a line of its own has its stitches on the next. */
function isOfStitches(state: State): boolean {
  return state === 'specials' || state === 'abbreviations';
}

function sortRow(walk: Walk, line: TextLine, index: number): boolean {
  const row = asTableRow(line, walk.table);
  const label = rowLabel(row.text);
  if (label === null) return false;
  const elsewhere = walk.state === 'front' || walk.state === 'notes' || walk.state === 'finishing';
  if (label.bare && elsewhere && walk.parts.length === 0 && !bareRows(walk, index)) return false;
  if (tellsColour(row.text.slice(label.end), walk.heading?.words ?? '')) {
    put(walk, 'notes', itemOf(line, line.text));
    return true;
  }
  addRow(walk, line, row, label);
  return true;
}

/** `Rows 1-15: Color A`, and under a heading of stripes `Rows 1-4: White`: which yarn those rows are in, and no work. */
function tellsColour(rest: string, heading: string): boolean {
  if (COLOUR_ALONE.test(rest)) return true;
  return /stripe|colou?r/i.test(heading) && /^(?:\p{L}+ ?){1,3}\.?$/u.test(rest) && !namesWork(rest);
}

const COLOUR_ALONE =
  /^(?:(?:in|with|using)\s+)?(?:(?:[Cc]olou?r|[Yy]arn|[Ss]hade)\s+)?(?:[A-Z]|MC|CC\d?)(?:\s*\([\p{L} ]+\))?[.;]?$/u;

/** A heading may stand in the first cell of a table: `Hook | 5 mm`. */
function headingOf(line: TextLine): Heading | null {
  const [first] = line.cells;
  if (first === undefined || line.cells.length < 2)
    return findHeading(line.text.text) ?? bareSizes(line.text.text);
  const heading = findHeading(first.text);
  const restAt = line.text.text.indexOf(first.text) + first.text.length;
  return heading === null || heading.restAt !== null ? null : { ...heading, restAt };
}

/** `Sizes Child (Woman, Man)`: no mark behind the word, but nothing else than a list of sizes. */
function bareSizes(text: string): Heading | null {
  // `Small (Medium, Large)` right under the title.
  if (/^[\p{L} -]{1,20}\([\p{L}, -]+\)$/u.test(text) && listsSizes(text))
    return { section: 'sizes', field: null, words: '', restAt: 0 };
  if (namesSizes(text)) return { section: 'sizes', field: null, words: '', restAt: 0 };
  const words = /^sizes?(?=\s)/i.exec(text)?.[0];
  if (words === undefined || !listsSizes(text.slice(words.length).trim())) return null;
  return { section: 'sizes', field: null, words, restAt: words.length };
}

/** Numbered lines are rows when several stand together and all instruct. */
function bareRows(walk: Walk, index: number): boolean {
  const near = [index - 1, index + 1].map((i) => walk.lines[i]);
  return near.some((line) => line !== undefined && rowLabel(line.text.text)?.bare === true);
}

/** A heading's word may also be a piece of the work or a line of a list. */
function isHeadingHere(walk: Walk, line: TextLine, heading: Heading): boolean {
  const { text } = line.text;
  const isSentence =
    /^[a-z]/.test(text) &&
    heading.restAt === null &&
    line.mark === null &&
    !(line.gap && /^[^.]+$/.test(text));
  if (isSentence) return false;
  if (walk.state === 'abbreviations' && heading.restAt !== null)
    return heading.section !== 'notes' || /note/i.test(heading.words);
  return true;
}

function openSection(walk: Walk, line: TextLine, heading: Heading): void {
  const { section, restAt } = heading;
  const rest = restAt === null ? null : trimText(sliceText(line.text, restAt));
  const isNoteOnly =
    section === 'notes' && rest !== null && /^(?:please )?note|^n\.?b|^tip/i.test(heading.words);
  if (isNoteOnly && walk.state === 'part' && walk.beforeRows.has(line)) {
    addWork(walk, line, 'note', null);
    return;
  }
  const isLine = section === 'title' || section === 'designer' || section === 'version' || section === 'date';
  if ((isLine || section === 'licence') && rest !== null) {
    put(walk, section, itemOf(line, rest, heading));
    return;
  }
  if (section === 'instructions') {
    openInstructions(walk, line, heading);
    return;
  }
  walk.state = section;
  walk.heading = heading;
  walk.table = null;
  // `Multiple: 6 sts + 1`: the word belongs to what is said.
  const whole = /\bmultiple$/i.test(heading.words);
  const item = itemOf(line, whole ? line.text : (rest ?? line.text), heading);
  const behind = section === 'abbreviations' && rest !== null ? definitionBehind(rest, walk.rowWords) : null;
  if (rest === null || rest.text === '') walk.headings.push(item);
  else if (behind === null) put(walk, section, item);
  else {
    put(walk, section, itemOf(line, behind.before, heading));
    put(walk, 'specials', itemOf(line, behind.told));
  }
  // `Skill level: easy` and the like are done with on their line.
  const isDone = section === 'skill' || section === 'terms';
  if (isDone && rest !== null && rest.text !== '') walk.state = walk.parts.length === 0 ? 'front' : 'part';
}

/** `Instructions`, `To make (make 2)`, `Pattern: Marram Coaster`, `Method: 25 ch.` */
function openInstructions(walk: Walk, line: TextLine, { restAt, words }: Heading): void {
  const rest = restAt === null ? null : trimText(sliceText(line.text, restAt));
  walk.state = 'part';
  walk.heading = null;
  if (rest === null || rest.text === '') {
    const make = makeIn(words.replace(/^to make/i, ''));
    walk.headings.push(itemOf(line, line.text));
    // `Square`, and below it `To make (make 2)`.
    const { heading = null, name = null, beside = null } = walk.pending ?? {};
    if (make > 1) walk.pending = { heading, name, make, beside, lines: [] };
  } else if (walk.buckets.title.length === 0 && !isInstruction(rest.text))
    put(walk, 'title', itemOf(line, rest));
  // `Pattern: Ann Example, Leeds` under the title.
  else if (
    walk.parts.length === 0 &&
    walk.buckets.designer.length === 0 &&
    designerIn(`by ${rest.text}`) !== null
  ) {
    put(walk, 'designer', itemOf(line, rest));
    walk.state = 'front';
  } else addWork(walk, line, isInstruction(rest.text) ? 'instruction' : 'note', null, rest);
}

/** What is told wherever it stands: the terms, the designer, whose work it is. */
function sortAnywhere(walk: Walk, line: TextLine): boolean {
  const { text } = line.text;
  if (isChainRule(text)) {
    // Among the rows it holds from there on.
    if (walk.state === 'part' && walk.parts.length > 0) addWork(walk, line, 'note', null);
    else put(walk, 'notes', itemOf(line, line.text));
    return true;
  }
  if (onlyStatesTerms(text) && !(walk.state === 'part' && isInstruction(text))) {
    put(walk, 'terms', itemOf(line, line.text));
    return true;
  }
  if (walk.state === 'front' && walk.buckets.designer.length === 0) {
    const designer = designerIn(text);
    if (designer !== null) {
      put(
        walk,
        'designer',
        itemOf(
          line,
          sliceText(line.text, text.lastIndexOf(designer), text.lastIndexOf(designer) + designer.length),
        ),
      );
      return true;
    }
  }
  if (/^(?:©|\(c\)\s*\d{4})|^copyright\b|\ball rights reserved\b|^creative commons|^CC[ -]BY/i.test(text)) {
    put(walk, 'licence', itemOf(line, line.text));
    return true;
  }
  return false;
}

function sortByState(walk: Walk, line: TextLine): void {
  const { text } = line.text;
  const item = itemOf(line, line.text, walk.heading);
  const { title, about } = walk.buckets;
  switch (walk.state) {
    case 'front': {
      if (isSupplyLine(text)) {
        put(walk, 'materials', item);
        return;
      }
      const tells = isProse(text) && /[.!]$/.test(text) && about.length < 2 && title.length > 0;
      put(walk, tells ? 'about' : 'kept', item);
      return;
    }
    case 'part':
      sortInPart(walk, line);
      return;
    case 'terms':
      put(walk, namedTerms(text) === null ? 'kept' : 'terms', item);
      return;
    case 'materials':
      // A paragraph further down that talks to the reader is nothing to buy.
      put(
        walk,
        line.gap && line.mark === null && (isProse(text) || /!$/.test(text)) ? 'notes' : 'materials',
        item,
      );
      return;
    default:
      put(walk, walk.state, item);
  }
}
