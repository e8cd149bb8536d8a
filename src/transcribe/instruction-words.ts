/** A line of pasted text in, whether it tells what to work out: by the words of the trade it begins with and holds. */

import { STITCHES } from '../stitches/table.ts';

/** Words an instruction begins with, besides the names of stitches. */
const VERBS =
  `ch chs chain sk skip miss turn do dont join rejoin joining with using change fasten fo break cut rep repeat work working make
   begin beginning beg start starting place pm pull in into inc increase dec decrease continue cont magic from attach
   drop carry rs ws slip sl then next foundation as for`.split(/\s+/);

/** Words that only instructions have, whatever the dialect. */
const WORKED =
  /\b(?:sts?|stitch(?:es)?|chs?|chain|sps?|turn|fasten off|break yarn|rings?|shells?|cl|clusters?|picots?|inc|dec|invdec|v-?sts?|fpdc|bpdc|pm|sl|ss|fsc|fdc|fhdc|fo)\b|\b(?:rep|repeat|work)\b.*\b(?:rows?|rnds?|rounds?|\*)\s*\d*/i;

/** `Change to B`, `With MC`; a letter alone is a yarn only as a capital. */
const NAMES_YARN =
  /\b(?:[Ww]ith|[Uu]sing|[Cc]hange to|[Cc]hanging to|[Jj]oin|[Aa]ttach|[Dd]rop|[Bb]reak)\s+(?:(?:yarn|colou?r)\s+)?(?:[A-Z]|MC|CC\d?)\b/;

const STITCH_WORDS: ReadonlySet<string> = new Set(
  STITCHES.flatMap(({ us, uk }) => [us, uk])
    .flatMap(({ abbr, name }) => [abbr, name.split(' ')[0] ?? ''])
    .map((word) => word.toLowerCase()),
);
const FIRST_WORDS: ReadonlySet<string> = new Set([...VERBS, ...STITCH_WORDS]);

/** `Ch 1, sc in each st across, turn.`, `With A, ch 25.`, `6 sc in magic ring`; not `Work loosely.`, `Make 4 and sew one to each corner.` */
export function isInstruction(text: string): boolean {
  if (FORMS_PATTERN.test(text) || GOES_ON.test(text) || KEEPS_ON.test(text) || DOES_ROWS.test(text))
    return true;
  return (
    beginsAsInstruction(text) && namesWork(text) && !MADE_AND_PUT.test(text) && !OUT_OF_A_BOOK.test(text)
  );
}

/** `From "A Shelf of Blankets", …`: where the pattern was printed before. */
const OUT_OF_A_BOOK = /^from\s+["“‘']/i;

/** `Rows 2 and 3 form the patt.`: what going on in it means. */
const FORMS_PATTERN =
  /^(?:(?:these|the|last)\b[^.]{0,20}\b)?(?:rows?|rnds?|rounds?)\b[^.]{0,20}\bforms?\s+(?:the\s+)?patt(?:ern)?\b/i;

/** `Continue in patt until work measures 160cm`. */
const GOES_ON =
  /^(?:cont(?:inue)?|work)\.?\s+(?:straight\s+|even\s+)?in\s+(?:the\s+)?patt(?:ern)?\b[^.]*\b(?:until|for)\b/i;

/** `keep going with row 2 till you've got 80 rows`. */
const KEEPS_ON =
  /^(?:just )?(?:keep|carry on|go on)\s+(?:on )?(?:(?:going|repeating|working|doing|making)\s+)?(?:with\s+|on\s+)?(?:the\s+)?(?:rows?|rnds?|rounds?)\s+\d[^.]*\b(?:until|till?)\b/i;

/** `then do rows 2 and 3 another 9 times so you have 21 rows`, `Now work the last 2 rows 5 more times`. */
const DOES_ROWS =
  /^(?:(?:and|then|now|next|so),?\s+)*(?:just\s+)?(?:do|work|rep(?:eat)?)\s+(?:the\s+)?(?:(?:last|these)\s+\d+\s+(?:rows?|rnds?|rounds?)|(?:rows?|rnds?|rounds?)\s+\d[\d\s,&–-]*(?:(?:and|to)\s+\d+)?)\s+[^.]*\b(?:times?|more|again|twice|once|until|till?)\b/i;

/** A stitch, a place or a turn is named. */
export function namesWork(text: string): boolean {
  if (WORKED.test(text) || NAMES_YARN.test(text)) return true;
  return (text.toLowerCase().match(/[a-z]+(?:\d*tog)?/g) ?? []).some((word) => isStitchWord(word));
}

/** `Border: Ch 1, sc evenly around`: a name of the designer's own, a colon and an instruction. */
export function isNamedInstruction(text: string): boolean {
  const found = (/^\p{Lu}[\p{L} ]{1,30}:\s+/u.exec(text) ?? SMALL_NAME.exec(text))?.[0];
  return found !== undefined && isInstruction(text.slice(found.length));
}

/** `edge: ch 1, …` of a text in small letters. */
const SMALL_NAME =
  /^(?:the )?(?:(?:top|bottom|side|second|other|outer) )?(?:edge|edging|border|trim|loop|hanger|tie|strap|handle|cord|finish|brim|cuff|seam)s?(?::|\s[–—-])\s+/;

/** `Insert the eyes between rounds 4 and 5`: done by the maker, with no stitch worked. */
export function isForMaker(text: string): boolean {
  return FOR_MAKER.test(text) || MADE_AND_PUT.test(text);
}

const FOR_MAKER =
  /^(?:insert|stuff|sew|pop|lay|embroider|attach|position|pin|add|close|tie|thread|glue|put|press|count|check|try|leave|keep|tip|run the (?:tail|end|yarn)|gather|secure|trim|wrap)\b/i;

/** `Make 12: put one at each of the 6 sc`, `Make 4 and sew one to each corner`: of something told above. */
const MADE_AND_PUT =
  /^make (?:\d+|two|three|four|five|six|eight|ten|twelve)(?: more)?\s*(?:[:;,–-]|,? and)\s*(?:put|sew|attach|fasten|tie|place|hang)\s+(?:one|two|them|each|it)\b/i;

/** `Ch 22.`, `With MC, ch 22 (26), turn.`, `25 ch`, `Make a magic ring.`: nothing but what a first row stands on. */
export function opensWork(text: string): boolean {
  const start = FOUNDATION.exec(text)?.[0];
  return start !== undefined && BEHIND_FOUNDATION.test(text.slice(start.length));
}

/** `Ch 121, sl st in 2nd ch from hook …`: a chain and what is worked back along it, in one sentence. */
export function opensStrip(text: string): boolean {
  return /^(?:with [^,.;:]{1,20}, )?(?:chs?|chain)\s*\d+[^.;*]{0,12},[^.,;*]*\b(?:in|into)\s+(?:the\s+)?(?:\d(?:nd|rd|th)|second|third|fourth)\s+ch(?:ain)?\s+from\b/i.test(
    text,
  );
}

/** `Commence with 38 ch`: where what is worked begins. */
export function foundationAt(text: string): number {
  return opensWork(text) ? (LEADING.exec(text)?.[0].length ?? 0) : 0;
}

const LEADING =
  /^(?:(?:commence|start|begin)\s+(?:with|by making)|to (?:begin|start),?)\s+(?=\d|ch\b|chain\b)/i;
const FOUNDATION =
  /^(?:(?:with|using|in)\s+[^,.;:]{1,40}?,?\s+|(?:the\s+)?(?:(?:main|contrast(?:ing)?|first)\s+(?:colou?r|yarn|shade)|(?:colou?r|yarn|shade)\s+[a-z]|mc|cc\d?|[a-c])\s*[,:]\s*|(?:to )?(?:start|begin|foundation(?: ch(?:ain)?)?|(?:starting|base|set-?up) ch(?:ain)?|(?:cent(?:re|er)|beg(?:inning)?|starting) ring)\s*(?::|[–—-](?=\s))\s*)?(?:(?:to (?:begin|start),?|(?:commence|start|begin)\s+(?:with|by making))\s+(?:a\s+)?)?(?:loosely\s+)?(?:(?:make|work)\s+(?:a\s+)?)?(?:(?:chs?|chains?)\s*(?:of\s*)?\d+|\d+(?:\s*[([][\d\s,:]+[)\]])?\s*(?:chs?|chains?)\b|(?:form\s+)?(?:an?\s+)?(?:magic|adjustable)\s+(?:ring|circle|loop)\b)/i;
const BEHIND_FOUNDATION =
  /^(?:\s*[([][^()[\]]*[)\]]|\s+(?:loosely|sts?|stitches)\b|,?\s*(?:and\s+)?turn\b|[,.]?\s*(?:and\s+)?(?:join|sl st|ss|slip stitch)\b[^.]*\b(?:ring|circle|first ch(?:ain)?|1st ch(?:ain)?)\b[^.]*|,?\s*(?:or|plus)\b[^.]*|\s+(?:with|using|in) [a-z ]{2,36}|\s+(?:to (?:begin|start)|for (?:the )?(?:foundation|base)\b[^.]*))*[.;]?(?:\s+turn\.?)?$/i;

/** `Beginning ch-3 counts as a dc throughout`, `Turning chain does not count as a stitch`: a rule, with nothing to work. */
export function isChainRule(text: string): boolean {
  return CHAIN_RULE.test(text) || OF_EVERY_ROW.test(text);
}

const CHAIN_RULE =
  /^(?:the\s+|your\s+|all\s+|each\s+|every\s+)?(?:(?:beg(?:inning)?|turning|starting|initial|first|t)\.?[ -]*)?(?:(?:chs?|chains?)[ -]?\d*|\d+[ -]?(?:chs?|chains?)|tch)\b[^.,;(]*\b(?:counts?|counted)\b/i;

/** `Every row begins with ch 5, which counts as the first dc and the ch 2 of the first sp.` */
const OF_EVERY_ROW =
  /^(?:each|every|all)\s+rows?\b[^.]*?\b(?:begins?|begun|starts?)\b[^.]*?\b(?:ch(?:ain)?s?[ -]?\d+|\d+[ -]?ch(?:ain)?s?)\b[^.]*\b(?:counts?|counted|stands?|this is)\b/i;

/** `Change color on the last pull-through of the stitch before`: how it is always done, with no yarn named. */
export function isColourHabit(text: string): boolean {
  return /^(?:always\s+)?(?:change|changing)\s+colou?rs?\s+(?:on|in|at|when|by|with)\b/i.test(text);
}

/** Words that speak to the maker about the work rather than say what to work. */
export function isProse(text: string): boolean {
  const words = text.split(' ').length;
  // `Rep 2nd and 3rd rows until the back is as long as the front`.
  if (REPEATS_ROWS.test(text) || FORMS_PATTERN.test(text) || KEEPS_ON.test(text) || DOES_ROWS.test(text))
    return false;
  return (
    words > 3 &&
    /\b(?:i|i’m|i'm|you|your|you’ll|you'll|we|we’ll|we'll|our|my|this|these|should|will|can|love|because|don’t|don't|that’s|that's|isn’t|isn't|please|remember|is|are|was)\b/i.test(
      text,
    )
  );
}

const REPEATS_ROWS = /^rep(?:eat)?\b[^.;]*\b(?:rows?|rnds?|rounds?)\b[^.;]*\b(?:until|till)\b/i;

function beginsAsInstruction(text: string): boolean {
  const found = /^[*([{†‡\s]*(?:now\s+(?=rep))?(?:\d+\s*(?:x\s*)?)?([a-z]+)/i.exec(text);
  const word = found?.[1]?.toLowerCase();
  if (word === undefined) return /^\*/.test(text);
  return FIRST_WORDS.has(word) || isStitchWord(word);
}

function isStitchWord(word: string): boolean {
  if (STITCH_WORDS.has(word)) return true;
  const legs = /^([a-z]+?)\d*tog$/.exec(word)?.[1];
  return legs !== undefined && STITCH_WORDS.has(legs);
}
