/** Two colours -> how well one is read on the other, by the formula of WCAG 2.2; a colour and its grounds -> the nearest that does. */

export type Hex = `#${string}`;

/** Letters, and what is drawn to be pressed or filled in (WCAG 2.2, 1.4.3 and 1.4.11, level AA). */
export const LETTERS = 4.5;
export const EDGES = 3;

/** From 1 to 21. */
export function contrast(one: Hex, other: Hex): number {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

export function leastContrast(colour: Hex, grounds: readonly Hex[]): number {
  return Math.min(...grounds.map((ground) => contrast(colour, ground)));
}

/** The same colour with as little black or white in it as makes it do; null where none does. */
export function nearestThat(
  does: (tried: Hex) => boolean,
  colour: Hex,
  towards: 'black' | 'white',
): Hex | null {
  for (let share = 0; share <= 255; share++) {
    const tried = mixed(colour, towards === 'black' ? '#000000' : '#ffffff', share / 255);
    if (does(tried)) return tried;
  }
  return null;
}

/** `share` of the second. */
export function mixed(one: Hex, other: Hex, share: number): Hex {
  const [from, to] = [channels(one), channels(other)];
  const digits = from.map((value, i) =>
    Math.round(value + ((to[i] ?? 0) - value) * share)
      .toString(16)
      .padStart(2, '0'),
  );
  return `#${digits.join('')}`;
}

/** Relative luminance. */
function luminance(colour: Hex): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
    const part = value / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function channels(colour: Hex): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}
