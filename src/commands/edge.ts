/** `edge`: a piece, or a number of places, and a number of stitches -> the edging spread along each side, in words. */

import type { CompiledSize } from '../compiled.ts';
import { planEdge } from '../measure/edge-plan.ts';
import { edgeSides } from '../measure/edge-sides.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { edgingRow } from '../wording/word-edge.ts';
import { type EdgeWanted, readEdgeAsked } from './edge-flags.ts';
import { type EdgedPiece, edgeJson, edgeText } from './edge-told.ts';
import { findSize } from './find-size.ts';
import { onePattern } from './one-pattern.ts';
import { OWN_FLAGS, ownSizeAsked } from './own-flags.ts';
import type { ExitCode, Terminal, Verb } from './verb.ts';

export const edge: Verb = {
  name: 'edge',
  takes:
    '[PATH] [--along PLACES] [--put N] [--across N] [--corner N] [--multiple "4 plus 1"] [--size NAME] [--json]',
  about: 'how many stitches go along each side of a piece, and into which places',
  least: 0,
  most: 1,
  flags: [
    {
      name: 'along',
      value: 'PLACES',
      about: 'without a pattern: the places of one side, "52 row ends", "40 sts"',
    },
    {
      name: 'of',
      value: 'STITCH',
      about: 'without a pattern: what the rows are worked in, to tell how many lie flat',
    },
    { name: 'put', value: 'N', about: 'so many stitches along each side (as many as lie flat)' },
    { name: 'across', value: 'N', about: 'so many along the top and along the bottom (one in each)' },
    { name: 'corner', value: 'N', about: 'so many in each corner of a pattern’s piece, 0 for none (3)' },
    { name: 'multiple', value: '"4 plus 1"', about: 'along each side a number that the edging repeats over' },
    { name: 'with', value: 'STITCH', about: 'the stitch of the edging (single crochet)' },
    { name: 'terms', value: 'us|uk', about: 'without a pattern: whose terms (us)' },
    { name: 'size', value: 'NAME', about: 'only this size' },
    ...OWN_FLAGS.filter(({ name }) => name !== 'ball'),
    { name: 'json', value: null, about: 'the edging as JSON, for other programs' },
  ],
  teaches: `Spreads an edging along the sides of a piece: the same on opposite sides, the same from both ends wherever that
can be, and told where it would ruffle or pull in.

  npm run -s rowfold -- edge patterns/my-square
  npm run -s rowfold -- edge patterns/my-square --size small --put 25 --corner 2
  npm run -s rowfold -- edge patterns/my-square --multiple "4 plus 1"
  npm run -s rowfold -- edge --along "52 row ends" --put 60
  npm run -s rowfold -- edge --along "31 row ends" --of dc

An edging that the pattern has is left out: the sides are those under it.`,
  run: async ({ paths, flags, values }, terminal) => {
    const found = paths.length > 0 ? await patternPieces(paths, values, terminal) : null;
    if (found !== null && 'code' in found) return found.code;
    const asked = readEdgeAsked(values, found?.pattern ?? null);
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const { wanted } = asked;
    const pieces: EdgedPiece[] = [];
    for (const { name, piece } of found === null ? [{ name: null, piece: wanted.piece }] : piecesOf(found)) {
      if (piece === null) {
        terminal.tell('There is no piece with sides that an edging could go along.');
        return 1;
      }
      const plan = planEdge(piece.sides, wanted);
      if (plan.kind !== 'planned') {
        terminal.tell(cannotEdge(plan, wanted, name));
        return 1;
      }
      pieces.push({ name, piece, sides: plan.sides, inCorner: wanted.inCorner });
    }
    // A row for all sides alike would pull in the sides that slant.
    const straight = pieces.every(({ piece }) => !piece.slants);
    const row = straight ? edgingRow(pieces, wanted.stitch, wanted.voice) : null;
    const told = { title: found?.pattern.title ?? null, pieces, row, wanted };
    terminal.say(flags.has('json') ? JSON.stringify(edgeJson(told), null, 2) : edgeText(told));
    return 0;
  },
};

interface Found {
  readonly pattern: Pattern;
  readonly sizes: readonly CompiledSize[];
}

async function patternPieces(
  paths: readonly string[],
  values: ReadonlyMap<string, string>,
  terminal: Terminal,
): Promise<Found | { readonly code: ExitCode }> {
  const read = await onePattern('edge', paths, terminal);
  if (read.kind === 'not one') return read;
  const { compiled } = read.file;
  if (read.faulty || compiled.pattern === null) return { code: 1 };
  const wanted = values.get('size');
  const found = wanted === undefined ? null : findSize(compiled, wanted);
  if (found?.kind === 'unknown') {
    terminal.tell(found.message);
    return { code: 2 };
  }
  const own = ownSizeAsked(values, compiled, found?.kind === 'found' ? found.size : null);
  if (own.kind === 'wrong') {
    terminal.tell(own.message);
    return { code: 2 };
  }
  if (own.kind === 'made') return { pattern: own.compiled.pattern ?? compiled.pattern, sizes: [own.size] };
  return { pattern: compiled.pattern, sizes: found?.kind === 'found' ? [found.size] : compiled.sizes };
}

function piecesOf({ pattern, sizes }: Found) {
  return sizes.map(({ size, fabric }) => ({ name: size.name, piece: edgeSides(pattern, fabric) }));
}

/** Which rule cannot be met, and the nearest that can. */
function cannotEdge(
  plan: Exclude<ReturnType<typeof planEdge>, { readonly kind: 'planned' }>,
  { multiple }: EdgeWanted,
  size: string | null,
): string {
  const of = size === null ? '' : `Size ${size}: `;
  if (plan.kind === 'too short')
    return `${of}the ${plan.side.side} has ${plan.side.places} places, and the corners leave none of them: use --corner 0.`;
  const near = plan.nearest.join(' and ');
  return `${of}${plan.stitches} is no multiple of ${multiple?.of ?? 1} plus ${multiple?.plus ?? 0}; the nearest ${plan.nearest.length === 1 ? 'is' : 'are'} ${near}.`;
}
