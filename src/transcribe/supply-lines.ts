/** A line that stands under no heading in, whether it tells of yarn or hook out. */

import { isYarnLine } from './read-yarn.ts';
import { letteredYarn } from './yarn-letters.ts';

const HOOK =
  /\b\d{1,2}(?:[.,]\d{1,3})?\s*-?\s*mm\b.*\bhooks?\b|\bhooks?\b.*\b\d{1,2}(?:[.,]\d{1,3})?\s*-?\s*mm\b/i;
const AMOUNT =
  /\b\d[\d.,]*\s*(?:g|gr|grams?|oz|m|metres?|meters?|yds?|yards?|balls?|skeins?|hanks?|cakes?)\b|\b(?:one|two|three|four)\s+(?:balls?|skeins?|hanks?)\s+of\b|^(?:\d|two|three|four|five|six|seven|eight|nine)\s+(?:\w+\s+)?colou?rs\b/i;
const ROLE =
  /^(?:(?:yarn|colou?r|col\.?|shade)\s+[A-Z]|MC|CC\d?|C\d|main colou?r|contrast(?:ing)? colou?r)\b/i;

/** `MC: 200 g cream`, `Yarn A – grey`, `Chunky yarn, 150 g; 8 mm hook`, `3 colours`. */
export function isSupplyLine(text: string): boolean {
  if (text.length > 160 || /\b(?:gauge|tension)\b/i.test(text)) return false;
  if (HOOK.test(text) && !/\b(?:sts?|rows?|rnds?)\b/i.test(text)) return true;
  if (letteredYarn(text) !== null && ROLE.test(text)) return true;
  return AMOUNT.test(text) && isYarnLine(text, null);
}
