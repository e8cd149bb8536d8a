/** The text of `site.yaml` beside the patterns in, what the site is to be called, look like and offer out; or what is wrong with it, in one sentence. */

import { LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { nearest } from '../diagnostics/nearest.ts';
import { oneLine } from '../pattern/build-pattern.ts';
import type { Photograph, SeenPhotograph } from '../pattern/photograph.ts';
import type { Moved } from './moved-pages.ts';
import { HOUSE_PALETTE, type Palette, paletteOf } from './palette.ts';

export const SETTINGS_FILE = 'site.yaml';

/** One of a list, or several. */
function oneOrMore<T extends z.ZodType>(schema: T) {
  return z.union([schema, z.array(schema).min(1)]).optional();
}

const offer = z.strictObject({
  paper: oneOrMore(z.enum(['A4', 'Letter'])),
  terms: oneOrMore(z.enum(['own', 'us', 'uk', 'us-full', 'uk-full'])),
  charts: oneOrMore(z.enum(['right-handed', 'left-handed'])),
  form: oneOrMore(z.enum(['flat', 'folded', 'large print'])),
  ink: oneOrMore(z.enum(['usual', 'low'])),
  holds: oneOrMore(z.enum(['all', 'words', 'charts'])),
  sizes: oneOrMore(z.enum(['each', 'all'])),
});

const words = () => z.string().trim().min(1);
const hex = () => z.string().regex(/^#?(?:[0-9a-f]{3}|[0-9a-f]{6})$/i);
const whole = () => z.url({ protocol: /^https?$/ });

/** From the top of the site, with or without strokes at its ends. */
const way = () => z.string().regex(/^\/?[^\s/?#.][^\s/?#]*(?:\/[^\s/?#.][^\s/?#]*)*\/?$/);

const link = z.strictObject({ text: words(), to: z.union([whole(), z.url({ protocol: /^mailto$/ })]) });
const portrait = z.strictObject({ file: words(), shows: words() });
const dark = z.strictObject({ accent: hex().optional(), paper: hex().optional() });
const colours = z.strictObject({ accent: hex().optional(), paper: hex().optional(), dark: dark.optional() });

const settings = z.strictObject({
  address: whole().optional(),
  name: words().optional(),
  line: words().optional(),
  about: words().optional(),
  portrait: portrait.optional(),
  links: z.array(link).optional(),
  footer: words().optional(),
  colours: colours.optional(),
  booklets: z.array(offer).optional(),
  moved: z.record(way(), way()).optional(),
});

/** What may stand at each place, for a key that may not. */
const KEYS: Readonly<Record<string, readonly string[]>> = {
  '': Object.keys(settings.shape),
  booklets: Object.keys(offer.shape),
  links: Object.keys(link.shape),
  portrait: Object.keys(portrait.shape),
  colours: Object.keys(colours.shape),
  'colours dark': Object.keys(dark.shape),
};

/** What is wanted where something else stands, or nothing. */
const WANTED: Readonly<Record<string, string>> = {
  address: 'the address of the site on the web, such as https://example.org/patterns/',
  name: 'what the site is called: your own name, or that of your shop',
  line: 'a line to stand under the name',
  about: 'some words about you, in one or more paragraphs below a |',
  portrait: 'a picture of you or your mark, as {file: me.jpg, shows: Me at my window with a basket of wool}',
  'portrait file': 'the name of a picture that lies beside site.yaml',
  'portrait shows': 'what the picture shows, in a sentence for those who do not see it',
  links: 'a list of places of your own, each as {text: My shop, to: https://example.org}',
  'links text': 'what the link says',
  'links to': 'a whole address, such as https://example.org or mailto:me@example.org',
  footer: 'some words for the foot of every page',
  colours: 'your colours, as {accent: "#1d5b4f"}',
  'colours accent': 'a colour code in quotes, such as "#1d5b4f"',
  'colours paper': 'a colour code in quotes, such as "#f2f4ef"',
  'colours dark': 'your colours by night, as {accent: "#8fd1c0"}',
  'colours dark accent': 'a colour code in quotes, such as "#8fd1c0"',
  'colours dark paper': 'a colour code in quotes, such as "#141b19"',
  moved: 'old addresses and where they lead now, as {old-square: lantern-square}',
  booklets: 'a list of kinds of booklet, each as {paper: A4, form: folded}',
};

export type BookletOffer = z.infer<typeof offer>;

export interface SiteSettings {
  /** Where the site will stand, with a stroke at its end; null where that is not known. */
  readonly address: string | null;
  /** The designer's own. */
  readonly name: string | null;
  readonly line: string | null;
  /** Paragraphs. */
  readonly about: readonly string[];
  readonly portrait: Photograph | null;
  /** The same, found on the disk. */
  readonly seenPortrait: SeenPhotograph | null;
  readonly links: readonly { readonly text: string; readonly to: string }[];
  readonly footer: readonly string[];
  readonly palette: Palette;
  readonly booklets: readonly BookletOffer[];
  /** Old addresses and where they lead, without strokes at the ends. */
  readonly moved: Moved;
}

/** Quiet: each size on the two papers, in the pattern's own terms. Any other edition is made when it is asked for. */
export const USUAL_SETTINGS: SiteSettings = {
  address: null,
  name: null,
  line: null,
  about: [],
  portrait: null,
  seenPortrait: null,
  links: [],
  footer: [],
  palette: HOUSE_PALETTE,
  booklets: [{ paper: ['A4', 'Letter'] }],
  moved: {},
};

export type ReadSettings =
  | { readonly kind: 'read'; readonly settings: SiteSettings }
  | { readonly kind: 'wrong'; readonly why: string };

export function readSettings(text: string): ReadSettings {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const [broken] = document.errors;
  if (broken !== undefined)
    return wrong(lines.linePos(broken.pos[0]).line, `this is not YAML: ${broken.message}`);
  const read = settings.safeParse(document.toJS() ?? {});
  const lineAt = (at: readonly PropertyKey[]): number => {
    // The nearest thing above that stands in the file.
    for (let path = at; ; path = path.slice(0, -1)) {
      const node = document.getIn(path, true);
      if (typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range))
        return lines.linePos(Number(node.range[0])).line;
      if (path.length === 0) return 1;
    }
  };
  if (read.success) {
    const { address, booklets, colours: asked = {}, ...given } = read.data;
    const look = paletteOf(asked);
    if (look.kind === 'unreadable') return wrong(lineAt(['colours', ...look.fault.path]), look.fault.why);
    return {
      kind: 'read',
      settings: {
        address: address === undefined ? null : address.replace(/\/*$/, '/'),
        name: given.name === undefined ? null : oneLine(given.name),
        line: given.line === undefined ? null : oneLine(given.line),
        about: paragraphs(given.about),
        portrait: given.portrait === undefined ? null : { ...given.portrait, by: null, part: null },
        seenPortrait: null,
        links: given.links ?? [],
        footer: paragraphs(given.footer),
        palette: look.palette,
        booklets: booklets ?? USUAL_SETTINGS.booklets,
        moved: Object.fromEntries(
          Object.entries(given.moved ?? {}).map(([old, to]) => [withoutStrokes(old), withoutStrokes(to)]),
        ),
      },
    };
  }
  const issue = innermost(read.error.issues);
  return wrong(lineAt(issue?.path ?? []), issue === undefined ? 'it could not be read' : told(issue));
}

function withoutStrokes(way: string): string {
  return way.replace(/^\/|\/$/g, '');
}

/** An empty line stands between two. */
function paragraphs(text: string | undefined): readonly string[] {
  return (text ?? '')
    .split(/\n\s*\n/)
    .map(oneLine)
    .filter((paragraph) => paragraph !== '');
}

type Issue = z.core.$ZodIssue;

/** Of a value that may be one word or a list of them, what is wrong with the words. */
function innermost(issues: readonly Issue[]): Issue | undefined {
  // A key misspelt is not told as one that is missing.
  const issue = issues.find(({ code }) => code === 'unrecognized_keys') ?? issues[0];
  if (issue?.code !== 'invalid_union') return issue;
  const inner = issue.errors.flat().find((each) => each.code === 'invalid_value');
  return inner === undefined ? issue : { ...inner, path: [...issue.path, ...inner.path] };
}

function told(issue: Issue): string {
  const place = issue.path.filter((step) => typeof step === 'string').join(' ');
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = KEYS[place] ?? [];
      const near = nearest(issue.keys[0] ?? '', known);
      return `there is no "${issue.keys.join('", "')}" here${near === null ? '' : `; did you mean "${near}"?`} The keys are ${known.join(', ')}`;
    }
    case 'invalid_value':
      return `"${place}" may be ${issue.values.map(String).join(', ')}`;
    default:
      return `"${place}" is ${WANTED[place.startsWith('moved ') ? 'moved' : place] ?? `not what it should be: ${issue.message}`}`;
  }
}

export function wrong(line: number | null, why: string): ReadSettings {
  return { kind: 'wrong', why: `${SETTINGS_FILE}${line === null ? '' : `, line ${line}`}: ${why}` };
}
