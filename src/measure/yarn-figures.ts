/** The trade's figures that yarn is reckoned by where nothing better is known. */

/** One maker's measured strips: 10.6 in of yarn for each inch of a row of single crochet (rules of thumb). */
export const YARN_PER_SC_WIDTH = 10.6;
/** Left at each start and end: common practice, from memory. */
export const TAIL_MM = 150;
/** Added to all: common practice, from memory. */
export const ALLOWANCE = 1.1;
/** How far makers' hands lie apart: a fifth either way, from memory; a very tight or loose hand goes beyond it. */
export const HANDS = { least: 0.8, most: 1.2 } as const;
