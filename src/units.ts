/** Text such as `15 cm` or `6 1/2 in` in, millimetres, metres and grams out; and back to print. The only place that converts. */

/** International inch and yard of 1959. */
const MM_PER_IN = 25.4;
const M_PER_YD = 0.9144;
/** International avoirdupois ounce. */
const G_PER_OZ = 28.349523125;
/** The point of page description, as PDF has it (ISO 32000). */
const PT_PER_IN = 72;
const PX_PER_IN = 96;
const MM_PER_CM = 10;
const MM_PER_M = 1000;

export const mmFromCm = (cm: number): number => cm * MM_PER_CM;
export const cmFromMm = (mm: number): number => mm / MM_PER_CM;
export const mmFromIn = (inches: number): number => inches * MM_PER_IN;
export const inFromMm = (mm: number): number => mm / MM_PER_IN;
export const mmFromPt = (pt: number): number => (pt / PT_PER_IN) * MM_PER_IN;
export const ptFromMm = (mm: number): number => (mm / MM_PER_IN) * PT_PER_IN;
/** Of CSS, 96 to the inch (CSS Values and Units 4). */
export const pxFromMm = (mm: number): number => (mm / MM_PER_IN) * PX_PER_IN;
export const mmFromM = (m: number): number => m * MM_PER_M;
export const mFromMm = (mm: number): number => mm / MM_PER_M;
export const mFromYd = (yd: number): number => yd * M_PER_YD;
export const ydFromM = (m: number): number => m / M_PER_YD;
export const gFromOz = (oz: number): number => oz * G_PER_OZ;
export const ozFromG = (g: number): number => g / G_PER_OZ;

/** What a measure measures, in the unit the rest of the code holds it in. */
export type Measure =
  | { readonly kind: 'length'; readonly mm: number; readonly unit: LengthUnit }
  | { readonly kind: 'mass'; readonly g: number; readonly unit: MassUnit };

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'yd';
export type MassUnit = 'g' | 'oz';

/** Reads one measure: `15 cm`, `6 in`, `6 1/2 in`, `6½"`, `200 yd`, `100 g`. Null when it is not one. */
export function parseMeasure(text: string): Measure | null {
  const found = /^(?<amount>[\d.,\s/¼½¾⅛⅜⅝⅞⅓⅔-]+?)\s*(?<unit>[a-z]+\.?|["″”])$/i.exec(text.trim());
  const amount = parseAmount(found?.groups?.amount ?? '');
  const unit = unitNamed((found?.groups?.unit ?? '').toLowerCase().replace(/\.$/, ''));
  if (amount === null || unit === null) return null;
  if (unit === 'g') return { kind: 'mass', g: amount, unit };
  if (unit === 'oz') return { kind: 'mass', g: gFromOz(amount), unit };
  return { kind: 'length', mm: mmPer[unit] * amount, unit };
}

/** `10 cm` as it is; `15.2 x 14 cm`, `6 in x 5 in` as its two sides, each with its unit. */
export function sidesOf(written: string): string[] {
  const [across = '', up, more] = written.split(/\s*[x×]\s*/i);
  if (up === undefined || more !== undefined) return [written];
  const unit = /[a-z"″”.]+\s*$/i.exec(up)?.[0].trim() ?? '';
  return [/[a-z"″”]/i.test(across) ? across : `${across} ${unit}`, up];
}

const mmPer: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  cm: MM_PER_CM,
  m: MM_PER_M,
  in: MM_PER_IN,
  yd: M_PER_YD * MM_PER_M,
};

/** Half of what inches are printed to is lost in printing them. */
export const QUARTER_IN_MM = MM_PER_IN / 4;

/** Centimetres to the nearest half: `15 cm`, `15.5 cm`. */
export function printCm(mm: number): string {
  return `${Math.round(cmFromMm(mm) * 2) / 2} cm`;
}

/** Inches to the nearest quarter, as the trade prints them: `6 ¼ in`, `¾ in`. */
export function printIn(mm: number): string {
  const quarters = Math.round(inFromMm(mm) * 4);
  const whole = Math.floor(quarters / 4);
  const part = ['', '¼', '½', '¾'][quarters - whole * 4] ?? '';
  if (part === '') return `${whole} in`;
  return whole === 0 ? `${part} in` : `${whole} ${part} in`;
}

/** What is smaller than sizes are printed to, such as a tolerance: `0.6 cm`, `0.3 in`. */
export function printSmallCm(mm: number): string {
  return `${Math.round(mm) / MM_PER_CM} cm`;
}

export function printSmallIn(mm: number): string {
  return `${Math.round(inFromMm(mm) * 10) / 10} in`;
}

/** Hook sizes and the like: `5 mm`, `3.25 mm`. */
export function printMm(mm: number): string {
  return `${Math.round(mm * 100) / 100} mm`;
}

/** Yarn lengths to the whole metre. */
export function printM(m: number): string {
  return `${Math.round(m)} m`;
}

/** Yarn lengths to the whole yard. */
export function printYd(m: number): string {
  return `${Math.round(ydFromM(m))} yd`;
}

export function printG(g: number): string {
  return `${Math.round(g)} g`;
}

/** Ounces to one decimal, as ball bands give them: `3.5 oz`. */
export function printOz(g: number): string {
  return `${Math.round(ozFromG(g) * 10) / 10} oz`;
}

const unitWords: readonly (readonly [LengthUnit | MassUnit, readonly string[]])[] = [
  ['mm', ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters']],
  ['cm', ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters']],
  ['m', ['m', 'metre', 'metres', 'meter', 'meters']],
  ['in', ['in', 'ins', 'inch', 'inches', '"', '″', '”']],
  ['yd', ['yd', 'yds', 'yard', 'yards']],
  ['g', ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes']],
  ['oz', ['oz', 'ozs', 'ounce', 'ounces']],
];

function unitNamed(word: string): LengthUnit | MassUnit | null {
  return unitWords.find(([, words]) => words.includes(word))?.[0] ?? null;
}

const fractionCharacters: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** `15`, `15.5`, `15,5`, `1,000`, `6 1/2`, `6-1/2`, `6½`, `½`. */
function parseAmount(written: string): number | null {
  // Nothing that is measured here is less than nothing.
  if (/^[-\s]/.test(written)) return null;
  const found = /^(?<whole>\d+)?(?:[\s-]*(?:(?<over>\d+)\s*\/\s*(?<under>\d+)|(?<sign>[¼½¾⅛⅜⅝⅞⅓⅔])))?$/.exec(
    written,
  );
  if (found === null) return parseDecimal(written);
  const { whole, over, under, sign } = found.groups ?? {};
  // `16/2`: the pattern gives the 1 to the whole and the 6 to the fraction unless something stands between.
  if (whole !== undefined && over !== undefined && !/^\d+[\s-]+\d/.test(written)) {
    return parseFraction(`${whole}${over}`, under);
  }
  const part = sign === undefined ? parseFraction(over, under) : (fractionCharacters[sign] ?? null);
  if (over !== undefined && part === null) return null;
  if (whole === undefined && part === null) return null;
  return Number(whole ?? 0) + (part ?? 0);
}

function parseFraction(over: string | undefined, under: string | undefined): number | null {
  if (over === undefined || under === undefined || Number(under) === 0) return null;
  return Number(over) / Number(under);
}

/** A comma before exactly three digits parts thousands; before one or two it is a decimal comma. */
function parseDecimal(written: string): number | null {
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(written)) return Number(written.replaceAll(',', ''));
  if (/^\d*[.,]\d+$/.test(written)) return Number(written.replace(',', '.'));
  return /^\d+$/.test(written) ? Number(written) : null;
}
