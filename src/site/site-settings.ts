/** The text of `site.yaml` beside the patterns in, what the site is to offer out; or what is wrong with it, in one sentence. */

import { LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { nearest } from '../diagnostics/nearest.ts';

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

const settings = z.strictObject({
  address: z.url({ protocol: /^https?$/ }).optional(),
  booklets: z.array(offer).optional(),
});

export type BookletOffer = z.infer<typeof offer>;

export interface SiteSettings {
  /** Where the site will stand, with a stroke at its end; null where that is not known. */
  readonly address: string | null;
  readonly booklets: readonly BookletOffer[];
}

/** Quiet: each size on the two papers, in the pattern's own terms. Any other edition is made when it is asked for. */
export const USUAL_SETTINGS: SiteSettings = { address: null, booklets: [{ paper: ['A4', 'Letter'] }] };

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
  if (read.success) {
    const { address, booklets } = read.data;
    return {
      kind: 'read',
      settings: {
        address: address === undefined ? null : address.replace(/\/*$/, '/'),
        booklets: booklets ?? USUAL_SETTINGS.booklets,
      },
    };
  }
  const issue = innermost(read.error.issues);
  const at = issue?.path ?? [];
  const node = document.getIn(at, true);
  const range =
    typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range)
      ? Number(node.range[0])
      : 0;
  return wrong(lines.linePos(range).line, issue === undefined ? 'it could not be read' : told(issue));
}

type Issue = z.core.$ZodIssue;

/** Of a value that may be one word or a list of them, what is wrong with the words. */
function innermost(issues: readonly Issue[]): Issue | undefined {
  const [issue] = issues;
  if (issue?.code !== 'invalid_union') return issue;
  const inner = issue.errors.flat().find((each) => each.code === 'invalid_value');
  return inner === undefined ? issue : { ...inner, path: [...issue.path, ...inner.path] };
}

function told(issue: Issue): string {
  const place = issue.path.filter((step) => typeof step === 'string').join(' ');
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = place === '' ? Object.keys(settings.shape) : Object.keys(offer.shape);
      const near = nearest(issue.keys[0] ?? '', known);
      return `there is no "${issue.keys.join('", "')}" here${near === null ? '' : `; did you mean "${near}"?`} The keys are ${known.join(', ')}`;
    }
    case 'invalid_value':
      return `"${place}" may be ${issue.values.map(String).join(', ')}`;
    default:
      return place === 'address'
        ? '"address" is the address of the site on the web, such as https://example.org/patterns/'
        : `"${place}" is not what it should be: ${issue.message}`;
  }
}

function wrong(line: number, why: string): ReadSettings {
  return { kind: 'wrong', why: `${SETTINGS_FILE}, line ${line}: ${why}` };
}
