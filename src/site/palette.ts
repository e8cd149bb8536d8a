/** The colours a designer asks for -> those of her pages, by day and by night; or which of hers nobody could read, and what would do. */

import { contrast, EDGES, type Hex, LETTERS, leastContrast, mixed, nearestThat } from './contrast.ts';

/** As the style sheet calls them. */
export interface Scheme {
  readonly paper: Hex;
  readonly leaf: Hex;
  readonly sheet: Hex;
  readonly ink: Hex;
  readonly soft: Hex;
  readonly hair: Hex;
  readonly edge: Hex;
  readonly madder: Hex;
  readonly wash: Hex;
}

export interface Palette {
  readonly light: Scheme;
  readonly dark: Scheme;
}

/** The values that stand in `layouts/styles/1-paper.css`; a test holds the two together. */
export const HOUSE_PALETTE: Palette = {
  light: {
    paper: '#f5efe3',
    leaf: '#fbf8f1',
    sheet: '#fdfbf7',
    ink: '#2a2520',
    soft: '#62574b',
    hair: '#cdc1ad',
    edge: '#857867',
    madder: '#7d1f2d',
    wash: '#efe3d3',
  },
  dark: {
    paper: '#1c1916',
    leaf: '#25211d',
    sheet: '#f3ede1',
    ink: '#ece4d6',
    soft: '#b8ac9b',
    hair: '#463f37',
    edge: '#8d8172',
    madder: '#f0a89d',
    wash: '#332a25',
  },
};

export interface AskedColours {
  readonly accent?: string | undefined;
  readonly paper?: string | undefined;
  readonly dark?: { readonly accent?: string | undefined; readonly paper?: string | undefined } | undefined;
}

export interface ColourFault {
  /** Of the key in the file: `dark accent`. */
  readonly path: readonly string[];
  readonly why: string;
}

export type Coloured =
  | { readonly kind: 'palette'; readonly palette: Palette }
  | { readonly kind: 'unreadable'; readonly fault: ColourFault };

/** A night accent that she does not name is made of the day's: readable with room to spare. */
const MADE_UP = 7;

export function paletteOf(asked: AskedColours): Coloured {
  const accent = hexOf(asked.accent);
  const [dayPaper, nightPaper] = [hexOf(asked.paper), hexOf(asked.dark?.paper)];
  const day = (paper = dayPaper, madder = accent): Scheme => tinted(HOUSE_PALETTE.light, paper, madder);
  const made =
    accent === null
      ? null
      : nearestThat(
          (tried) => accentContrast(tinted(HOUSE_PALETTE.dark, nightPaper, tried)) >= MADE_UP,
          accent,
          'white',
        );
  const nightAccent = hexOf(asked.dark?.accent) ?? made;
  const night = (paper = nightPaper, madder = nightAccent): Scheme =>
    tinted(HOUSE_PALETTE.dark, paper, madder);
  // Charts lie on a light sheet by night too.
  const dayAccent = (scheme: Scheme): number =>
    Math.min(accentContrast(scheme), contrast(scheme.madder, HOUSE_PALETTE.dark.sheet));
  const fault =
    paperFault((paper) => day(paper), day().paper, ['paper'], 'white') ??
    paperFault((paper) => night(paper), night().paper, ['dark', 'paper'], 'black') ??
    accentFault((madder) => dayAccent(day(dayPaper, madder)), day().madder, ['accent'], 'black') ??
    accentFault(
      (madder) => accentContrast(night(nightPaper, madder)),
      night().madder,
      ['dark', 'accent'],
      'white',
    );
  return fault === null
    ? { kind: 'palette', palette: { light: day(), dark: night() } }
    : { kind: 'unreadable', fault };
}

/** A style sheet, or another text with the colours of the house in it, in those of the palette. */
export function coloured(text: string, palette: Palette): string {
  const pairs = (['light', 'dark'] as const).flatMap((scheme) => {
    const [house, own] = [HOUSE_PALETTE[scheme], palette[scheme]];
    return NAMES.map((name) => [house[name], own[name]] as const);
  });
  const own = new Map<string, string>(pairs);
  return text.replace(/#[0-9a-f]{6}\b/g, (hex) => own.get(hex) ?? hex);
}

const NAMES = ['paper', 'leaf', 'sheet', 'ink', 'soft', 'hair', 'edge', 'madder', 'wash'] as const;

/** What lies on the paper is the paper with a little white, ink or accent in it. */
function tinted(house: Scheme, paper: Hex | null, accent: Hex | null): Scheme {
  if (paper === null && accent === null) return house;
  const isNight = house === HOUSE_PALETTE.dark;
  const madder = accent ?? house.madder;
  const onPaper =
    paper === null
      ? {}
      : {
          paper,
          leaf: mixed(paper, '#ffffff', isNight ? 0.04 : 0.55),
          sheet: isNight ? house.sheet : mixed(paper, '#ffffff', 0.8),
          hair: mixed(paper, house.ink, 0.2),
        };
  return { ...house, ...onPaper, madder, wash: mixed(paper ?? house.paper, madder, isNight ? 0.12 : 0.07) };
}

/** On all that links and headings stand on. */
function accentContrast({ madder, paper, leaf, wash }: Scheme): number {
  return leastContrast(madder, [paper, leaf, wash]);
}

function accentFault(
  contrastOf: (accent: Hex) => number,
  accent: Hex,
  path: readonly string[],
  towards: 'black' | 'white',
): ColourFault | null {
  const has = contrastOf(accent);
  if (has >= LETTERS) return null;
  const near = nearestThat((tried) => contrastOf(tried) >= LETTERS, accent, towards);
  return {
    path,
    why: `the accent ${accent} has a contrast of ${figure(has)} to 1 with what it stands on, and letters need 4.5 to 1 to be read${offered(near)}`,
  };
}

/** Ink, small print and the edges of fields stay the house's: paper is what has to give way. */
function paperFault(
  schemeOn: (paper: Hex) => Scheme,
  paper: Hex,
  path: readonly string[],
  towards: 'black' | 'white',
): ColourFault | null {
  const grounds = (scheme: Scheme): Hex[] => [scheme.paper, scheme.leaf, scheme.wash];
  const small = (scheme: Scheme): number => leastContrast(scheme.soft, grounds(scheme));
  const edges = (scheme: Scheme): number => leastContrast(scheme.edge, grounds(scheme));
  const readable = (scheme: Scheme): boolean => small(scheme) >= LETTERS && edges(scheme) >= EDGES;
  const scheme = schemeOn(paper);
  if (readable(scheme)) return null;
  const near = nearestThat((tried) => readable(schemeOn(tried)), paper, towards);
  return {
    path,
    why: `on the paper ${paper} small print has a contrast of ${figure(small(scheme))} to 1 and the edges of fields ${figure(edges(scheme))} to 1, and they need 4.5 and 3 to 1${offered(near)}`,
  };
}

function offered(near: Hex | null): string {
  return near === null ? '' : `; the nearest that would do is "${near}"`;
}

/** Rounded down, so that what fails never reads as what is needed. */
function figure(ratio: number): string {
  return (Math.floor(ratio * 10) / 10).toFixed(1);
}

function hexOf(given: string | undefined): Hex | null {
  if (given === undefined) return null;
  const digits = given.replace('#', '').toLowerCase();
  return `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits}`;
}
