/** The columns of the stitch table: everything any stage needs to know of a stitch. */

export type Terms = 'US' | 'UK';

/** How one dialect names a stitch. */
export interface StitchTerms {
  /** As printed: `sc`. */
  readonly abbr: string;
  /** In full words, singular: `single crochet`. */
  readonly name: string;
  /** Other spellings that mean this stitch in this dialect, lower case: `single`. */
  readonly alsoRead: readonly string[];
}

export type StitchFamily =
  | 'chain'
  | 'slip'
  | 'basic'
  | 'extended'
  | 'together'
  | 'start'
  | 'foundation'
  | 'post'
  | 'gathered'
  | 'linked'
  | 'fancy';

/** Where the hook enters, when it is not the top of a stitch. */
export type Enters = 'front post' | 'back post' | 'own chain' | 'surface';

/** Names of the chart symbols; `src/symbols/` draws one of each. */
export type SymbolId =
  | 'chain'
  | 'slip-stitch'
  | 'single'
  | 'half-double'
  | 'double'
  | 'treble'
  | 'double-treble'
  | 'triple-treble'
  | 'quadruple-treble'
  | 'extended-single'
  | 'extended-half-double'
  | 'extended-double'
  | 'extended-treble'
  | 'reverse-single'
  | 'looped-single'
  | 'linked-double'
  | 'linked-treble'
  | 'love-knot'
  | 'bullion'
  | 'magic-ring';

export interface StitchRow {
  /** What the rest of the code knows the stitch by, from its US terms: `sc`, `sl-st`, `dc3tog`, `dc5-popcorn`. */
  readonly id: string;
  readonly family: StitchFamily;
  readonly us: StitchTerms;
  readonly uk: StitchTerms;
  /** Yarn overs before the hook goes in; the slashes on the chart symbol. */
  readonly yarnOvers: number;
  /** Height in turning chains: sc 1, dc 3. */
  readonly heightChains: number;
  /** Height of the fabric it makes, single crochet = 1 (rules of thumb, from memory). */
  readonly heightInSc: number;
  /** Length of yarn it takes, single crochet = 1. */
  readonly yarnInSc: number;
  /** Places it is worked into: 1, or the legs of a decrease, 0 for a chain. */
  readonly uses: number;
  /** Stitches it leaves to be worked into. */
  readonly makes: number;
  /** Whether it is counted in `24 sts`. A chain and a slip stitch are not, unless the pattern says so. */
  readonly counted: boolean;
  /** The chain that takes its place at the start of a row, and whether the trade counts it as the stitch. */
  readonly turningChain: { readonly chains: number; readonly counts: 'yes' | 'no' | 'varies' } | null;
  /** Where the hook enters when it is not the top of a stitch: around a post, into a chain it makes itself. */
  readonly enters?: Enters;
  /** All its legs go into one place: popcorn, puff, bobble. */
  readonly inOnePlace?: true;
  /** How many legs that is, where they all go into one place; those of a decrease over several are its `uses`. */
  readonly legs?: number;
  /** Each leg is a whole stitch, and their tops are pulled together afterwards: popcorn. */
  readonly wholeLegs?: true;
  /** Lies along the way the yarn goes, from one stitch to the next, rather than standing on something. */
  readonly lies?: true;
  /** Reaches into a row further down, which its place has to name: `long dc in next st 2 rows below`. */
  readonly reachesDown?: true;
  /**
   * The plain stitch it is a form of: what each leg of a decrease or cluster is begun as, what a post, standing or
   * linked stitch would be without that. "Next dc" finds it, and a stated `12 dc` takes it in. Itself otherwise.
   */
  readonly legOf: string;
  readonly symbol: SymbolId;
  /** How it is made, one sentence in words that are the same in both dialects. */
  readonly how: string;
  /** Where the figures come from: a published source's name, or `memory`. */
  readonly source: string;
}
