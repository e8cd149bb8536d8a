/** Facts about what an along's file says, and whether its squares fit, in; the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const alongFaults = {
  'along/empty': (): Wording => ({
    severity: 'error',
    message: 'there is no along in this file',
    why: 'An along needs at least a title, its first day, what its squares have to match, and its weeks.',
    try: 'begin with title:, starts: and weeks:, each on a line of its own.',
  }),
  'along/date': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" is not a day of the calendar`,
    why: 'Nobody could be told when the weeks come out.',
    try: 'write year, month and day, like  2026-10-31',
  }),
  'along/address': ({ given, form }: Address): Wording => ({
    severity: 'error',
    message: `"${given}" is not the address of a page`,
    why: 'Makers follow it from the page, the calendar or the feed.',
    try: `write it whole, like  ${form}`,
  }),
  'along/rhythm': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" does not say on which weekday the releases come`,
    why: 'The day of every week is found from the first day and the rhythm.',
    try: 'write  every Saturday  or  every second Saturday',
  }),
  'along/weekday': ({ date, is, rhythm }: Weekday): Wording => ({
    severity: 'error',
    message: `${date} is a ${is}, and the releases come on ${rhythm}s`,
    why: 'One of the two would be kept and makers told the other.',
    try: `change the day, or write  every ${is}`,
  }),
  'along/hour': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" is not an hour of the day`,
    why: 'Nothing of a week may be seen before its hour, so the hour has to be sure.',
    try: 'write hours and minutes of a day of 24 hours, in quotes, like  "09:00"',
  }),
  'along/zone': ({ given, nearest }: Nearest): Wording => ({
    severity: 'error',
    message: `"${given}" is not a time zone`,
    why: 'An hour means an instant only by the clock of some place.',
    try:
      nearest === null
        ? 'write the name of the zone in the IANA time zone database, like  Europe/Vilnius  or  America/Halifax'
        : `write ${nearest}`,
  }),
  'along/hour-skipped': ({ week, hour, zone, shows }: Skipped): Wording => ({
    severity: 'warning',
    message: `on the day of week ${week} the clocks of ${zone} go past ${hour}`,
    why: `The week comes out at ${shows} by those clocks, which makers may not expect.`,
    try: 'choose another hour, or say so in the note of the week before.',
  }),
  'along/overlap': ({ week, date, before }: Overlap): Wording => ({
    severity: 'error',
    message: `week ${week} comes out on ${date}, which is not after week ${week - 1} on ${before}`,
    why: 'Two weeks would be out at once, or the later one first.',
    try: 'give the weeks days that follow one another.',
  }),
  'along/multiple': ({ given }: Given): Wording => ({
    severity: 'error',
    message: `"${given}" does not say over how many stitches the edging comes out`,
    why: 'The round below it is made to fit.',
    try: 'write it as the trade does, like  6 plus 5',
  }),
  'along/colour': ({ given, what, known }: Colour): Wording => ({
    severity: 'error',
    message: `${what} is in yarn ${given}, which is not one of the colours of the blanket`,
    why: 'Makers buy by the list of colours, and the totals are told by it.',
    try: `use one of ${known.join(', ')}, or list ${given} under yarn:`,
  }),
  'along/grid': ({ pieces, places, filled, offers }: Grid): Wording => ({
    severity: 'error',
    message: `the ${pieces} of all weeks fill ${filled} places, and the blanket has ${places}`,
    why: filled < places ? 'There would be holes in it.' : `Some ${pieces} would be left over.`,
    try: offers,
  }),
  'along/uneven-choices': ({ week, fills }: Uneven): Wording => ({
    severity: 'error',
    message: `the choices of week ${week} do not fill the same number of places: ${fills}`,
    why: 'A maker’s blanket would be full or not by what she chose.',
    try: 'give each choice a make: that comes to the same number of places.',
  }),
  'along/too-wide': ({ week, pattern, covers, across }: TooWide): Wording => ({
    severity: 'error',
    message: `week ${week}: ${pattern} covers ${covers} places side by side, and the blanket is ${across} across`,
    why: 'It cannot lie in the blanket anywhere.',
    try: `lay the blanket ${covers} across or more.`,
  }),
  'along/second-rows': (): Wording => ({
    severity: 'error',
    message: 'second-rows: is said of a blanket of squares',
    why: 'All rows of squares have the same number; only rows of hexagons may have one fewer.',
    try: 'leave it out, or write  shape: hexagons  beside it.',
  }),
  'along/empty-rows': (): Wording => ({
    severity: 'error',
    message: 'every second row has one hexagon fewer than one',
    why: 'There would be rows with nothing in them, and the others could not be joined.',
    try: 'lay the blanket 2 across or more, or leave out  second-rows:',
  }),
  'along/hexagon-edging': ({ rounds }: HexagonEdging): Wording => ({
    severity: 'error',
    message: 'an edging with a repeat is asked for round a blanket of hexagons',
    why: 'The edge goes out and in at every hexagon, so a repeat would have to be fitted between each two corners, and that cannot be reckoned yet.',
    try: `leave out  edging:  and let the border be its ${rounds === 1 ? 'round' : `${rounds} rounds`} of single crochet.`,
  }),
  'along/hexagon-border': ({ rounds, stitches, most }: HexagonBorder): Wording => ({
    severity: 'error',
    message: `a border of ${rounds} rounds is asked for round hexagons with ${stitches} stitches to a side`,
    why: 'At every inner corner the rounds lose stitches, and between two such corners none would be left.',
    try: `let it have ${most === 1 ? '1 round' : `${most} rounds or fewer`}.`,
  }),
  'along/hexagon-corners': ({ week, title, chains }: HexagonCorners): Wording => ({
    severity: 'error',
    message: `week ${week}: the corners of ${title} are ${chains === 0 ? 'stitches' : chains === 1 ? 'spaces of 1 chain' : `spaces of ${chains} chains`}`,
    why: 'Joining and border of hexagons are told for corners that are spaces of 2 chains; others cannot be had yet.',
    try: 'end it with a round that has (sc, ch 2, sc) in each corner.',
  }),
  'along/hexagon-covers': ({ week, pattern, covers }: HexagonCovers): Wording => ({
    severity: 'error',
    message: `week ${week}: ${pattern} is to cover ${covers} places, and this is a blanket of hexagons`,
    why: 'A hexagon covers one place; pieces of several can be had among squares only.',
    try: 'leave out  covers:  or choose a hexagon of the size of the others.',
  }),
  'along/other-shape': ({ week, title, is, piece, pieces, others, stitches }: OtherShape): Wording => ({
    severity: 'error',
    message: `week ${week}: ${title} is a ${is}, and this is a blanket of ${pieces}`,
    why: `No ${is} fits among ${pieces}: its edges do not meet theirs.`,
    try: `choose a ${piece} with ${stitches} stitches to a side for it; or, where all are ${others}, write  shape: ${others}  under blanket:`,
  }),
  'along/pattern-missing': ({ week, pattern }: Missing): Wording => ({
    severity: 'error',
    message: `week ${week}: there is no pattern in ${pattern}`,
    why: 'The week cannot come out without it.',
    try: 'check the spelling; the folder is looked for beside the along’s own file.',
  }),
  'along/pattern-faulty': ({ week, title, count, first }: Faulty): Wording => ({
    severity: 'error',
    message: `week ${week}: ${title} has ${count === 1 ? 'an error' : `${count} errors`}: ${first}`,
    why: 'The week is held back until it is put right; a week that is due makes the build end as failed.',
    try: 'check it by itself and put it right.',
  }),
  'along/size-missing': ({ week, title, given, nearest, known }: SizeMissing): Wording => ({
    severity: 'error',
    message:
      given === null
        ? `week ${week}: ${title} has several sizes, and none is chosen`
        : `week ${week}: ${title} has no size "${given}"`,
    why: 'Only one size of it fits the other squares.',
    try: nearest === null ? `write size: and one of ${known.join(', ')}` : `write  size: ${nearest}`,
  }),
  'along/corners': ({ week, title, found, sides }: Corners): Wording => ({
    severity: 'error',
    message: `week ${week}: the edges of ${title} cannot be counted: ${found}`,
    why: `Whether it can be joined to the others hangs on the stitches of each of its ${sides} edges.`,
    try: `end it with a joined round that has ${sides} corners, such as (sc, ch 2, sc) in corner, or 3 sc in each corner.`,
  }),
  'along/edge': ({ week, title, piece, counts, wanted, remedy }: Edge): Wording => ({
    severity: 'error',
    message: `week ${week}: ${title} has ${counts} stitches along its edges, and ${wanted} are agreed`,
    why: `Edges are joined stitch to stitch, so a ${piece} with more or fewer pulls the blanket out of shape.`,
    try: remedy,
  }),
  'along/finished-size': ({ week, title, pieces, measured, wanted, remedy }: Finished): Wording => ({
    severity: 'error',
    message: `week ${week}: ${title} comes out at ${measured}, and ${wanted} is agreed`,
    why: `${pieces === 'squares' ? 'Squares' : 'Hexagons'} of other sizes do not lie flat beside one another.`,
    try: remedy,
  }),
  'along/no-measure': ({ week, title }: Named): Wording => ({
    severity: 'error',
    message: `week ${week}: how large ${title} comes out cannot be told`,
    why: 'It may not fit beside the others.',
    try: 'give the pattern a gauge.',
  }),
  'along/other-corners': ({ week, title, pieces, meet, corner, others }: OtherCorners): Wording => ({
    severity: 'warning',
    message: `week ${week}: the corners of ${title} are ${corner}, those of the ${pieces} before ${others}`,
    why: `Where ${meet} ${pieces} meet, unlike corners leave a hole or a lump.`,
    try: 'end it with the same corners as the others.',
  }),
  'along/border': ({ found }: Border): Wording => ({
    severity: 'error',
    message: `the border cannot be worked as it is written: ${found}`,
    why: 'Its rounds are worked over the edge of the joined blanket, stitch by stitch, before they are told to makers.',
    try: 'put right the words of the edging, or the multiple it is over.',
  }),
  'along/balls': ({ letter, colour, listed, needed }: Balls): Wording => ({
    severity: 'warning',
    message: `${listed} of yarn ${letter}, ${colour}, ${listed === '1 ball' ? 'is' : 'are'} listed, and the blanket takes ${needed}`,
    why: 'Makers who bought what was listed run out, or have much over, by the last week.',
    try: `list ${needed}.`,
  }),
} as const;

interface Given {
  readonly given: string;
}

interface Address extends Given {
  readonly form: string;
}

interface Nearest extends Given {
  readonly nearest: string | null;
}

interface Weekday {
  readonly date: string;
  /** `Sunday`. */
  readonly is: string;
  readonly rhythm: string;
}

interface Skipped {
  readonly week: number;
  readonly hour: string;
  readonly zone: string;
  /** `03:30`. */
  readonly shows: string;
}

interface Overlap {
  readonly week: number;
  readonly date: string;
  readonly before: string;
}

interface Colour extends Given {
  /** `the border`, `week 2: Reed Square`. */
  readonly what: string;
  readonly known: readonly string[];
}

interface Grid {
  /** `squares`. */
  readonly pieces: string;
  readonly places: number;
  readonly filled: number;
  /** What would fill it; a sentence's end. */
  readonly offers: string;
}

interface Uneven {
  readonly week: number;
  /** `Reed Square 6, Long Reed 8`. */
  readonly fills: string;
}

interface TooWide {
  readonly week: number;
  readonly pattern: string;
  readonly covers: number;
  readonly across: number;
}

interface HexagonEdging {
  readonly rounds: number;
}

interface HexagonBorder extends HexagonEdging {
  readonly stitches: number;
  /** As many as can be worked. */
  readonly most: number;
}

interface HexagonCorners extends Named {
  /** Of each corner; 0 where a stitch is the corner. */
  readonly chains: number;
}

interface HexagonCovers {
  readonly week: number;
  readonly pattern: string;
  readonly covers: number;
}

interface OtherShape extends Named {
  /** `hexagon`: what it is. */
  readonly is: string;
  /** `square`, `squares`: what the others are. */
  readonly piece: string;
  readonly pieces: string;
  /** `hexagons`: more of what it is. */
  readonly others: string;
  readonly stitches: number;
}

interface Named {
  readonly week: number;
  readonly title: string;
}

interface Missing {
  readonly week: number;
  readonly pattern: string;
}

interface Faulty extends Named {
  readonly count: number;
  readonly first: string;
}

interface SizeMissing extends Named {
  readonly given: string | null;
  readonly nearest: string | null;
  readonly known: readonly string[];
}

interface Corners extends Named {
  /** `four`. */
  readonly sides: string;
  readonly found: string;
}

interface Edge extends Named {
  /** `square`. */
  readonly piece: string;
  /** `30, 30, 29 and 30`. */
  readonly counts: string;
  readonly wanted: string;
  readonly remedy: string;
}

interface Finished extends Named {
  /** `squares`. */
  readonly pieces: string;
  readonly measured: string;
  readonly wanted: string;
  readonly remedy: string;
}

interface OtherCorners extends Named {
  /** `squares`. */
  readonly pieces: string;
  /** How many meet in one place: `four`. */
  readonly meet: string;
  readonly corner: string;
  readonly others: string;
}

interface Border {
  readonly found: string;
}

interface Balls {
  readonly letter: string;
  readonly colour: string;
  readonly listed: string;
  readonly needed: string;
}
