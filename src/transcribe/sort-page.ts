/** The lines of a page or an email around a pattern, and the pattern's title, taken out of the walk. */

import { findHeading } from './headings.ts';
import { sliceText } from './mapped-pieces.ts';
import { emailSubject, isEmailHeading, isGreeting, isPageNumber, tableUnit } from './page-lines.ts';
import { onlyStatesTerms, statedTerms } from './read-terms.ts';
import { rowLabel } from './row-labels.ts';
import { isSupplyLine } from './supply-lines.ts';
import { type TextLine, withoutOrnament } from './tidy-lines.ts';
import { bracketBehind, designerIn, isTitle, titleAndDesigner } from './title-lines.ts';
import { itemOf, leaveOut, put, type Walk } from './walk.ts';

/** True when the line was of the page, and is dealt with. */
export function sortPageLine(walk: Walk, index: number): boolean {
  const line = walk.lines[index];
  if (line === undefined) return true;
  const { text } = line.text;
  if (line.isRule) return leaveOut(walk, line, 'a rule');
  if (isPageNumber(text) && (line.gap || /page/i.test(text) || isFinished(walk.lines[index - 1])))
    return leaveOut(walk, line, 'a page number');
  if (walk.state !== 'part' && isEmailHeading(text, walk.inEmailHead)) return sortEmailHeading(walk, line);
  walk.inEmailHead = false;
  if (isTitleAgain(walk, line)) return leaveOut(walk, line, 'the title again');
  const unit = tableUnit(line.cells.map((cell) => cell.text));
  if (unit !== null && line.cells.length > 1) {
    walk.table = unit;
    return leaveOut(walk, line, 'the head of a table');
  }
  // The letter around a quoted pattern, greetings and all, is none of it.
  const isLetter = walk.quotedWork && line.quoted === 0 && rowLabel(text) === null;
  if (!isLetter && !isGreeting(text)) return false;
  put(walk, 'kept', itemOf(line, line.text));
  return true;
}

/** The first line that can be one; a line that says something else is none. */
export function sortTitle(walk: Walk, line: TextLine): boolean {
  if (walk.state !== 'front' || walk.heading !== null || walk.buckets.title.length > 0) return false;
  const { text } = line.text;
  const behind = bracketBehind(text);
  if (behind !== null && statedTerms(text.slice(behind.start, behind.end)) !== null) {
    put(walk, 'title', itemOf(line, sliceText(line.text, 0, behind.titleEnd)));
    put(walk, 'terms', itemOf(line, sliceText(line.text, behind.start, behind.end)));
    return true;
  }
  if (statesSomething(text) || !isTitle(line)) return false;
  const both = titleAndDesigner(text);
  if (both === null) put(walk, 'title', itemOf(line, line.text));
  else {
    put(walk, 'title', itemOf(line, sliceText(line.text, 0, both.title.length)));
    put(walk, 'designer', itemOf(line, sliceText(line.text, both.at)));
  }
  return true;
}

function statesSomething(text: string): boolean {
  return (
    findHeading(text) !== null || isSupplyLine(text) || onlyStatesTerms(text) || designerIn(text) !== null
  );
}

function sortEmailHeading(walk: Walk, line: TextLine): boolean {
  walk.inEmailHead = true;
  const subject = emailSubject(line.text.text);
  const at = subject === null ? -1 : line.text.text.lastIndexOf(subject);
  if (subject === null || at === -1 || walk.buckets.title.length > 0)
    return leaveOut(walk, line, 'the head of an email');
  put(walk, 'title', itemOf(line, sliceText(line.text, at)));
  return true;
}

/** A running head, or the title of a forwarded pattern below the email's subject. */
function isTitleAgain(walk: Walk, line: TextLine): boolean {
  const title = walk.buckets.title[0];
  const plain = (words: string): string => withoutOrnament(words).toLowerCase();
  return (
    title !== undefined &&
    plain(title.text.text).length > 3 &&
    plain(title.text.text) === plain(line.text.text)
  );
}

function isFinished(line: TextLine | undefined): boolean {
  return line === undefined || line.isRule || /[.)\]!–—]$/.test(line.text.text);
}
