/** A film of a pattern and the times of its rows: its shape, how a file writes times and addresses, and times as a clock shows them. */

/** A row that the film has a time for, as the file names it. */
export interface FilmTime {
  /** Null where the pattern has one part and the file does not name it. */
  readonly part: string | null;
  /** `Rnd 3`, `Rows 4-15`, `Foundation`. */
  readonly row: string;
  readonly seconds: number;
  /** Where the time stands in the file: `film.0.times.Square.Rnd 3`. */
  readonly path: string;
}

/** Something in the film that is no row: `What you need`. */
export interface FilmTopic {
  readonly title: string;
  readonly seconds: number;
  readonly path: string;
}

export interface Film {
  /** What tells it from the others; null for the only one. */
  readonly name: string | null;
  readonly address: string;
  readonly lengthSeconds: number | null;
  /** What stands behind the address to begin at a time, `{seconds}` in the place of the number. */
  readonly at: string;
  /** The size that is made in it, where rows of other sizes are numbered otherwise. */
  readonly size: string | null;
  /** Whose hands it shows, where that is said. */
  readonly hand: 'left' | 'right' | null;
  readonly times: readonly FilmTime[];
  readonly topics: readonly FilmTopic[];
  /** Where it stands in the file: `film`, `film.0`. */
  readonly path: string;
}

/** W3C Media Fragments URI 1.0, the temporal dimension in seconds: what a browser's own player follows. */
export const MEDIA_FRAGMENT = '#t={seconds}';

/** `4:10`, `75:20`, `1:04:10`, and as exact as `4:10.5`. */
export const TIME_WRITTEN = /^(?:\d{1,2}:[0-5]?\d|\d{1,3}):[0-5]\d(?:\.\d{1,3})?$/;

/** Whole, and without a place in the page: that is what `at:` adds. */
export const ADDRESS_WRITTEN = /^https?:\/\/[^\s/?#"'<>\\]+(?:[/?][^\s#"'<>\\]*)?$/i;

/** Something behind an address, with the place of the seconds in it. */
export const AT_WRITTEN = /^[?&#/;][^\s"'<>\\]*\{seconds\}[^\s"'<>\\]*$/;

/** Of a time as `TIME_WRITTEN` has it. */
export function secondsOf(written: string): number {
  return written.split(':').reduce((sum, figure) => sum * 60 + Number(figure), 0);
}

/** `4:10`, `1:04:10`; parts of a second are left out. */
export function clockTime(seconds: number): string {
  const whole = Math.floor(seconds);
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (n: number): string => String(n).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}
