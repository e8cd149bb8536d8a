/** The words behind a square's name in, `2 ch, miss 2 sts, 1 tr into next tr`, the square they come to out. */

export interface Square {
  readonly filled: boolean;
  /** How wide it is between its posts. */
  readonly chains: number;
  /** As the text writes it. */
  readonly stitch: string;
  /** What the words tell it over. */
  readonly over: 'space' | 'block' | 'both';
  /** The chain that a row begins with, where it is told with its first square; null for any other square. */
  readonly begins: number | null;
  /** The text's own word for leaving stitches out. */
  readonly skip: string;
}

const ST = '((?:half |double )?(?:trebles?|double crochets?)|hdc|dc|htr|dtr|tr)s?';
const ANY =
  '(?:sts?|stitch(?:es)?|squares?|(?:half |double )?(?:trebles?|double crochets?)|hdc|dc|htr|dtr|tr|chs?|chains?)s?';
const BLOCK = '(?:an?\\s|the\\s)?(?:blocks?|blks?|bls?|filled squares?|solid mesh)';

const CHAIN = /^(?:(?:ch|chain) ?(\d)|(\d) ?(?:ch|chains?))$/i;
const SKIP = new RegExp(
  `^(sk|skip|miss) (?:the )?(?:next )?(?:(\\d) ?)?(?:${ANY})?(?: below| of (?:the )?${BLOCK})?$`,
  'i',
);
const AS_MANY = new RegExp(`^(?:the )?(?:next )?(\\d) ?${ANY}(?: (?:below|of ${BLOCK}))?$`, 'i');
const SKIP_SPACE =
  /^(?:the |one |1 |an? )*(?:next )?(?:(?:ch-?(\d)|(\d) ?-?ch)(?:[ -](?:sp|space)s?)?|(?:sp|space))$/i;
/** `ch 5 (counts as dc and ch 2)`. */
const COUNTS = new RegExp(
  `\\b(?:ch ?(\\d)|(\\d) ?ch)\\b,?\\s*\\(?(?:which |this )?(?:counts?|stands?) (?:as|for) (?:an? |1 |one |the |first )*${ST}(?:(?:,| and| plus| \\+) (?:an? |the )?(?:ch[- ]?(\\d)|(\\d)[- ]?ch)(?:[- ]sp)?)?\\)?`,
  'i',
);
const POST = new RegExp(`^(?:1 ?)?${ST} (?:in|into|on) (?:the )?(?:next|following) ${ANY}$`, 'i');
const ALONG = new RegExp(
  `^(?:1 ?)?${ST} (?:in|into|on) (?:each of )?(?:the )?(?:next |following )?(\\d) ?${ANY}(?: of ${BLOCK})?$`,
  'i',
);
const INTO = new RegExp(
  `^(\\d) ?${ST} (?:in|into|over) (?:an? |the |next |following )*(?:(?:ch-?(\\d)|(\\d) ?-?ch)[ -]?(?:(?:sp|space)|of (?:a |the )?(?:sp|space))|(?:sp|space))$`,
  'i',
);
const WHOLE = new RegExp(`^(\\d) ?${ST}(?: (?:over|on) ${BLOCK})?$`, 'i');

type Told = Omit<Square, 'begins'>;

/** What each clause of the words is. */
interface Clauses {
  chains: number[];
  skipped: number[];
  /** One in each of so many, with the post among them or not. */
  along: number[];
  into: number[];
  /** So many in all, the post among them. */
  whole: number[];
  posts: number;
  stitches: Set<string>;
  stitch: string;
  skip: string;
}

/** Null where the words are of anything else, or do not agree; `overWhat` is what a name told `Sp over bl` goes over. */
export function squareIn(words: string, overWhat: string | null): Square | null {
  const counted = COUNTS.exec(words);
  const [said = '', after, before, post, plus, plusUk] = counted ?? [];
  const over = plus ?? plusUk;
  const rest = counted === null ? words : words.replace(said, over === undefined ? '' : `ch ${over}`);
  const clauses = clausesOf(rest);
  if (clauses === null) return null;
  if (post !== undefined) addStitch(clauses, post);
  if (clauses.stitches.size !== 1) return null;
  const begins = counted === null ? null : Number(after ?? before);
  const only = overWhat === null ? null : /^(?:bl|filled|solid|closed)/i.test(overWhat) ? 'block' : 'space';
  const square = clauses.chains.length > 0 ? openSquare(clauses, only) : filledSquare(clauses, only);
  return square === null ? null : { ...square, begins };
}

function openSquare({ chains, skipped, posts, ...rest }: Clauses, only: Square['over'] | null): Told | null {
  const [k] = chains;
  const others = rest.along.length + rest.into.length + rest.whole.length;
  if (k === undefined || chains.length > 1 || posts !== 1 || others > 0) return null;
  if (skipped.some((n) => n !== k) || (skipped.length === 0 && only !== 'space')) return null;
  return { filled: false, chains: k, stitch: rest.stitch, over: only ?? 'both', skip: rest.skip };
}

function filledSquare(clauses: Clauses, only: Square['over'] | null): Told | null {
  const { along, into, whole, posts, stitch, skip } = clauses;
  const [wide] = [...into, ...whole.map((n) => n - 1), ...along.map((n) => (posts > 0 ? n : n - 1))];
  if (wide === undefined || wide < 1 || clauses.skipped.length > 0) return null;
  // A post of its own belongs to what goes into a space, and to stitches that are one short of the square.
  const short = along.includes(wide) || into.length > 0;
  const fit =
    into.every((n) => n === wide) &&
    whole.every((n) => n === wide + 1) &&
    along.every((n) => n === wide || n === wide + 1) &&
    posts === (short ? Math.max(1, Math.min(posts, 2)) : 0);
  if (
    !fit ||
    (only === 'space' && into.length === 0) ||
    (only === 'block' && along.length + whole.length === 0)
  )
    return null;
  // Stitch upon stitch is told, and over a space it is the same number of them.
  const both = only === null && along.length + whole.length > 0;
  return { filled: true, chains: wide, stitch, over: both ? 'both' : (only ?? 'space'), skip };
}

function clausesOf(words: string): Clauses | null {
  const found: Clauses = {
    chains: [],
    skipped: [],
    along: [],
    into: [],
    whole: [],
    posts: 0,
    stitches: new Set(),
    stitch: '',
    skip: 'sk',
  };
  const pieces = words.split(/[,;:()]|\bor\b|\bthen\b|\band\b(?! in)/i);
  for (const piece of pieces) {
    const clause = piece
      .trim()
      .replace(/\s+/g, ' ')
      .replace(/\.$/, '')
      .replace(/^(?:work|make) /i, '')
      .replace(/\b(?:one|a)(?= (?:treble|double|tr\b|dc\b))/i, '1')
      .replace(/\btwo\b/i, '2');
    if (clause !== '' && !addClause(found, clause)) return null;
  }
  return found;
}

function addClause(found: Clauses, clause: string): boolean {
  const chain = CHAIN.exec(clause);
  if (chain !== null) return found.chains.push(Number(chain[1] ?? chain[2])) > 0;
  const skip = SKIP.exec(clause);
  if (skip !== null) {
    found.skip = (skip[1] ?? 'sk').toLowerCase();
    found.skipped.push(Number(skip[2] ?? 1));
    return true;
  }
  const space = found.skipped.length > 0 ? SKIP_SPACE.exec(clause) : null;
  if (space !== null) return found.skipped.push(Number(space[1] ?? space[2] ?? found.skipped[0])) > 0;
  // `miss next 2 ch or 2 tr`.
  const asMany = found.chains.length > 0 && found.posts === 0 ? AS_MANY.exec(clause) : null;
  if (asMany !== null) return found.skipped.push(Number(asMany[1])) > 0;
  const post = POST.exec(clause);
  if (post !== null) {
    found.posts += 1;
    return addStitch(found, post[1]);
  }
  const along = ALONG.exec(clause);
  if (along !== null) return found.along.push(Number(along[2])) > 0 && addStitch(found, along[1]);
  const into = INTO.exec(clause);
  if (into !== null) {
    const wide = into[3] ?? into[4];
    if (wide !== undefined && wide !== into[1]) return false;
    return found.into.push(Number(into[1])) > 0 && addStitch(found, into[2]);
  }
  const whole = WHOLE.exec(clause);
  return whole !== null && found.whole.push(Number(whole[1])) > 0 && addStitch(found, whole[2]);
}

function addStitch(found: Clauses, stitch = ''): boolean {
  const plain = stitch.toLowerCase().replace(/s$/, '');
  found.stitches.add(plain);
  found.stitch = plain;
  return true;
}
