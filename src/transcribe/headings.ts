/** A line of pasted text in, the section of a pattern it opens out, with what already stands behind its colon. */

import { withoutOrnament } from './tidy-lines.ts';

export type Section =
  | 'title'
  | 'designer'
  | 'about'
  | 'terms'
  | 'skill'
  | 'sizes'
  | 'materials'
  | 'gauge'
  | 'abbreviations'
  | 'specials'
  | 'notes'
  | 'instructions'
  | 'finishing'
  | 'licence'
  | 'version'
  | 'date';

export interface Heading {
  readonly section: Section;
  /** The words of the heading as written, without its colon. */
  readonly words: string;
  /** `yarn`, `hook` or `notions` within the materials. */
  readonly field: 'yarn' | 'hook' | 'notions' | null;
  /** Index where the text behind the heading begins; null where the line ends with it. */
  readonly restAt: number | null;
}

type Entry = readonly [Section, Heading['field'], readonly string[]];

/** Headings as patterns print them: common practice. */
const ENTRIES: readonly Entry[] = [
  ['title', null, ['title', 'pattern name', 'name of pattern']],
  [
    'designer',
    null,
    ['designer', 'design', 'designed by', 'design by', 'pattern by', 'author', 'written by', 'by'],
  ],
  [
    'about',
    null,
    ['about', 'about this pattern', 'about the pattern', 'description', 'introduction', 'intro'],
  ],
  ['terms', null, ['terms', 'terminology', 'terms used', 'crochet terms', 'language']],
  [
    'skill',
    null,
    ['skill', 'skill level', 'level', 'difficulty', 'difficulty level', 'project level', 'experience'],
  ],
  ['skill', null, ['experience level', 'ability', 'ability level']],
  [
    'sizes',
    null,
    ['size', 'sizes', 'finished size', 'finished sizes', 'finished measurements', 'measurements'],
  ],
  ['sizes', null, ['dimensions', 'finished dimensions', 'final size', 'completed size', 'to fit', 'sizing']],
  ['sizes', null, ['finished measurement', 'actual size', 'actual measurements', 'size after blocking']],
  [
    'materials',
    null,
    ['materials', 'material', 'materials needed', 'supplies', 'supplies needed', 'you will need'],
  ],
  [
    'materials',
    null,
    ['you’ll need', 'what you need', 'what you will need', 'what you’ll need', 'equipment'],
  ],
  [
    'materials',
    null,
    ['materials and tools', 'tools and materials', 'requirements', 'you need', 'shopping list'],
  ],
  [
    'materials',
    'yarn',
    ['yarn', 'yarns', 'yarn used', 'wool', 'thread', 'colours', 'colors', 'yarn and colours'],
  ],
  ['materials', 'hook', ['hook', 'hooks', 'hook size', 'crochet hook', 'crochet hooks', 'hook sizes']],
  [
    'materials',
    'notions',
    ['notions', 'other materials', 'other', 'extras', 'haberdashery', 'tools', 'also needed'],
  ],
  ['gauge', null, ['gauge', 'tension', 'gauge/tension', 'tension/gauge', 'gauge swatch', 'gauge (tension)']],
  [
    'abbreviations',
    null,
    ['abbreviations', 'abbreviation', 'abbreviations used', 'abbreviation key', 'stitch key'],
  ],
  [
    'abbreviations',
    null,
    ['stitches used', 'stitches', 'stitch abbreviations', 'key', 'stitches & abbreviations'],
  ],
  [
    'abbreviations',
    null,
    ['stitches and abbreviations', 'abbreviations and stitches', 'stitches & terms', 'glossary'],
  ],
  [
    'abbreviations',
    null,
    ['terms and abbreviations', 'stitch names', 'standard abbreviations', 'common abbreviations'],
  ],
  [
    'abbreviations',
    null,
    ['explanation of terms', 'explanation of abbreviations', 'terms explained', 'abbreviations explained'],
  ],
  [
    'specials',
    null,
    ['special stitches', 'special stitch', 'special stitches used', 'special abbreviations'],
  ],
  [
    'specials',
    null,
    ['special abbreviation', 'special terms', 'special techniques', 'stitch guide', 'stitch glossary'],
  ],
  [
    'specials',
    null,
    ['stitch explanations', 'stitch definitions', 'special stitch instructions', 'pattern stitches'],
  ],
  ['specials', null, ['special instructions', 'special st', 'special sts', 'stitch patterns used']],
  [
    'notes',
    null,
    ['notes', 'note', 'pattern notes', 'pattern note', 'tips', 'before you begin', 'before you start'],
  ],
  [
    'notes',
    null,
    ['construction', 'construction notes', "designer's notes", 'designer’s notes', 'good to know', 'tip'],
  ],
  [
    'notes',
    null,
    ['care', 'care instructions', 'special notes', 'important', 'important notes', 'techniques'],
  ],
  ['notes', null, ['please note', 'n.b', 'nb', 'n.b.', 'errata', 'contact']],
  [
    'notes',
    null,
    ['stripes', 'stripe sequence', 'stripe pattern', 'stripe order', 'striping', 'colour plan'],
  ],
  ['notes', null, ['color sequence', 'colour sequence', 'color order', 'colour order', 'color plan']],
  ['notes', null, ['multiple', 'stitch multiple', 'pattern multiple']],
  [
    'instructions',
    null,
    ['instructions', 'pattern', 'directions', 'method', 'to make', 'how to make', 'pattern text'],
  ],
  ['instructions', null, ['pattern instructions', 'written instructions', 'written pattern', 'the pattern']],
  [
    'instructions',
    null,
    ['instructions for making', 'row by row', 'let’s begin', "let's begin", 'crochet pattern'],
  ],
  [
    'finishing',
    null,
    ['finishing', 'assembly', 'making up', 'to finish', 'to make up', 'finishing off', 'blocking'],
  ],
  [
    'finishing',
    null,
    ['to complete', 'finishing and assembly', 'assembly and finishing', 'final steps', 'sewing up'],
  ],
  [
    'finishing',
    null,
    [
      'finishing touches',
      'to put it together',
      'joining',
      'joining the squares',
      'joining squares',
      'to join',
      'to join squares',
      'to join the squares',
      'seaming',
      'putting it together',
    ],
  ],
  [
    'licence',
    null,
    ['copyright', 'licence', 'license', 'terms of use', 'copyright notice', 'rights', 'legal'],
  ],
  ['version', null, ['version', 'revision', 'edition']],
  ['date', null, ['date', 'published', 'updated', 'last updated', 'first published']],
];

const BY_WORDS: ReadonlyMap<string, Entry> = new Map(
  ENTRIES.flatMap((entry) => entry[2].map((words): [string, Entry] => [plain(words), entry])),
);

/** `MATERIALS`, `Hook: 5 mm (H-8)`, `Materials.—Cotton`, `Gauge – 14 sc and 16 rows = 10 cm`. */
export function findHeading(text: string): Heading | null {
  const whole = entryOf(text.replace(/\s*[:.!–—-]+\s*$/, ''));
  if (whole !== null) return headingOf(whole, text.replace(/\s*[:.!–—-]+\s*$/, ''), null);
  // No heading is longer than this; nothing behind is looked at.
  for (const found of text.slice(0, 60).matchAll(/:\s*|\s[–—=-]\s|\.\s?[–—]\s*/g)) {
    const words = text.slice(0, found.index);
    const entry = entryOf(words);
    if (entry !== null) return headingOf(entry, words, found.index + found[0].length);
  }
  return inCapitals(text);
}

/** `SIZE 33 cm square`, `TENSION. One square measures 10 cm`: capitals alone set the heading apart. */
function inCapitals(text: string): Heading | null {
  const words = /^[A-Z][A-Z&/ ]{2,30}(?=\.?\s+(?:[^A-Z\s]|[A-Z][a-z]))/.exec(text)?.[0].trim();
  const entry = words === undefined ? null : entryOf(words);
  if (words === undefined || entry === null) return null;
  return headingOf(entry, words, words.length + (text.charAt(words.length) === '.' ? 1 : 0));
}

function headingOf([section, field]: Entry, words: string, restAt: number | null): Heading {
  return { section, field, words: withoutOrnament(words), restAt };
}

function entryOf(words: string): Entry | null {
  const named = withoutOrnament(words);
  // `US stitch names`; but `US terms` states the terms themselves.
  const untermed = BY_WORDS.get(plain(named.replace(/^(?:us|uk)\s+/i, '')));
  const ofList = untermed?.[0] === 'abbreviations' || untermed?.[0] === 'specials' ? untermed : undefined;
  return (
    BY_WORDS.get(plain(named)) ??
    ofList ??
    BY_WORDS.get(plain(named.replace(/\s*\([^)]*\)\s*/g, ' '))) ??
    (PUTTING_TOGETHER.test(named) ? TOGETHER : null)
  );
}

/** `Putting Bruno together`, `Sewing your mouse up`, `Assembling the fox`: whatever the piece is called. */
const PUTTING_TOGETHER =
  /^(?:(?:putting|piecing|sewing|stitching) (?:[\p{L}’'-]+ ){1,4}(?:all )?(?:together|up)|assembling (?:[\p{L}’'-]+ ?){1,4})$/iu;
const TOGETHER: Entry = ['finishing', null, []];

function plain(words: string): string {
  return words.toLowerCase().replace(/['’]/g, '’').replace(/\s+/g, ' ').trim();
}
