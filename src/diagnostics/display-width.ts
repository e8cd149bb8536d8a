/** A line of text in, how many columns of a terminal each of its letters takes up out. */

/** One letter as it is seen: a base with its accents, an emoji with its joiners. */
export interface Cell {
  /** Offset in the line where it begins. */
  readonly at: number;
  /** What to print: tabs as spaces, signs that would move the cursor as a stand-in. */
  readonly text: string;
  readonly columns: number;
}

const TAB_COLUMNS = 4;

/** Characters that steer a terminal or turn the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not reach a terminal.
const STEERING = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

const NO_WIDTH = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;
const EMOJI = /\p{Emoji_Presentation}|\uFE0F/u;

/** East Asian Wide and Fullwidth, Unicode Standard Annex 11, in blocks. */
const WIDE =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uA960-\uA97F\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{20000}-\u{3FFFD}]/u;

export function cellsOf(line: string): readonly Cell[] {
  const cells: Cell[] = [];
  let column = 0;
  for (const { segment, index } of new Intl.Segmenter('en').segment(line)) {
    const isTab = segment === '\t';
    const columns = isTab ? TAB_COLUMNS - (column % TAB_COLUMNS) : columnsOf(segment);
    const text = isTab ? ' '.repeat(columns) : segment.replace(STEERING, '\uFFFD');
    cells.push({ at: index, text, columns });
    column += columns;
  }
  return cells;
}

function columnsOf(letter: string): number {
  if (NO_WIDTH.test(letter)) return letter.search(STEERING) === -1 ? 0 : 1;
  return EMOJI.test(letter) || WIDE.test(letter) ? 2 : 1;
}
